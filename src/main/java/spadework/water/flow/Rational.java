// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/** Runoff by the rational method, Q = C × i × A (H-11). The exact factor 1.008 is taken as 1, as is usual. */
public final class Rational {
    private Rational() {}

    /**
     * Flow in cfs.
     *
     * @param runoff {@code C}, 0 to 1
     * @param rain in inches an hour
     * @param acres the ground that drains there
     */
    public static Worked flow(Working runoff, Working rain, Working acres) {
        return Worked.of(
                "Qu",
                "runoff",
                runoff.number() * rain.number() * acres.number(),
                Unit.CUBIC_FOOT_PER_SECOND,
                new Formula(runoff.symbol() + " × " + rain.symbol() + " × " + acres.symbol(), "rational method (H-11)"),
                runoff,
                rain,
                acres);
    }

    /** Square feet as acres of 43,560. */
    public static Worked acres(Working squareFeet) {
        return Worked.of(
                "Aa",
                "area",
                squareFeet.number() / 43_560,
                Unit.ACRE,
                new Formula(squareFeet.symbol() + " ÷ 43560", "43,560 sf in an acre"),
                squareFeet);
    }
}
