// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.measure.Unit;
import spadework.water.flow.FullPipe;
import spadework.water.flow.Manning;
import spadework.working.Given;

/** Inputs of the hydraulic functions, by the letter that the formulas use. */
public final class FormulaInputs {
    private FormulaInputs() {}

    public static Given feet(String symbol, double feet) {
        return Given.of(symbol, symbol, feet, Unit.FOOT, "test");
    }

    public static Given inches(String symbol, double inches) {
        return Given.of(symbol, symbol, inches, Unit.INCH, "test");
    }

    public static Given ratio(String symbol, double value) {
        return Given.of(symbol, symbol, value, Unit.NONE, "test");
    }

    public static Given gpm(String symbol, double value) {
        return Given.of(symbol, symbol, value, Unit.GALLON_PER_MINUTE, "test");
    }

    public static Given cfs(String symbol, double value) {
        return Given.of(symbol, symbol, value, Unit.CUBIC_FOOT_PER_SECOND, "test");
    }

    static Given in(Unit unit, String symbol, double value) {
        return Given.of(symbol, symbol, value, unit, "test");
    }

    public static FullPipe pipe(double insideFeet, double slope, double n) {
        return Manning.full(feet("D", insideFeet), ratio("S", slope), ratio("n", n));
    }
}
