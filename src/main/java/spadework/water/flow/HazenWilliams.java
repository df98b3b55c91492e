// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Friction in a pipe under pressure, by Hazen and Williams, water at ordinary temperature (H-34). */
public final class HazenWilliams {
    /** Smooth plastic pipe (H-35; charts give 130 to 160). */
    public static final Listed PLASTIC =
            Listed.of("C", "Hazen-Williams C, plastic", 150, Unit.NONE, "friction charts; range 130 to 160 (H-35)");

    private static final double FEET_A_PSI = 2.307;
    private static final String SOURCE = "Hazen-Williams formula, US units (H-34)";

    private HazenWilliams() {}

    /**
     * Feet of head lost in 100 ft of pipe.
     *
     * @param gpm flow in US gallons a minute
     * @param c the pipe's C
     * @param inside inside diameter in inches
     */
    public static Worked perHundredFeet(Working gpm, Working c, Working inside) {
        double loss = 1043.94
                * Math.pow(gpm.number(), 1.852)
                / (Math.pow(c.number(), 1.852) * Math.pow(inside.number(), 4.8655));
        return Worked.of(
                "h100",
                "head lost in 100 ft",
                loss,
                Unit.FOOT,
                new Formula(
                        "1043.94 × " + gpm.symbol() + "^1.852 ÷ (" + c.symbol() + "^1.852 × " + inside.symbol()
                                + "^4.8655)",
                        SOURCE),
                gpm,
                c,
                inside);
    }

    /** Feet of head lost in a length of pipe in feet. */
    public static Worked loss(Working perHundredFeet, Working length) {
        return Worked.of(
                "hf",
                "head lost to friction",
                perHundredFeet.number() * length.number() / 100,
                Unit.FOOT,
                new Formula(perHundredFeet.symbol() + " × " + length.symbol() + " ÷ 100", SOURCE),
                perHundredFeet,
                length);
    }

    /** A head of water in feet as pressure in psi (H-36: 2.307 ft a psi). */
    public static Worked psi(Working head) {
        return Worked.of(
                "P",
                "pressure",
                head.number() / FEET_A_PSI,
                Unit.PSI,
                new Formula(head.symbol() + " ÷ " + FEET_A_PSI, "water at 60 °F, 2.307 ft a psi (H-36)"),
                head);
    }
}
