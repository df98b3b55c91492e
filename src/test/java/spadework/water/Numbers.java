package spadework.water;

import spadework.measure.Unit;
import spadework.working.Given;

/** Inputs of the hydraulic functions, by the letter that the formulas use. */
final class Numbers {
    private Numbers() {}

    static Given feet(String symbol, double feet) {
        return Given.of(symbol, symbol, feet, Unit.FOOT, "test");
    }

    static Given inches(String symbol, double inches) {
        return Given.of(symbol, symbol, inches, Unit.INCH, "test");
    }

    static Given ratio(String symbol, double value) {
        return Given.of(symbol, symbol, value, Unit.NONE, "test");
    }

    static Given gpm(String symbol, double value) {
        return Given.of(symbol, symbol, value, Unit.GALLON_PER_MINUTE, "test");
    }

    static Given cfs(String symbol, double value) {
        return Given.of(symbol, symbol, value, Unit.CUBIC_FOOT_PER_SECOND, "test");
    }

    static Given in(Unit unit, String symbol, double value) {
        return Given.of(symbol, symbol, value, unit, "test");
    }

    static FullPipe pipe(double insideFeet, double slope, double n) {
        return Manning.full(feet("D", insideFeet), ratio("S", slope), ratio("n", n));
    }
}
