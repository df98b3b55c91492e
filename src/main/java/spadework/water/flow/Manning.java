// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * Manning's formula in US units, V = 1.486 ÷ n × R^(2/3) × S^(1/2) (H-01). It holds for water that flows full and
 * rough by its own fall; all inputs are above zero.
 */
public final class Manning {
    private static final double K = 1.486;
    private static final String SOURCE = "Manning's formula, US units";

    /** The factor of US units, 1.486; some pages round it to 1.49. */
    public static final Listed FACTOR =
            Listed.of("k", "factor of US units", K, Unit.NONE, "1 ÷ 0.3048^(1 ÷ 3), as design manuals print it");

    private Manning() {}

    /**
     * A round pipe running full.
     *
     * @param inside inside diameter {@code D} in feet
     * @param slope {@code S} in feet per foot, above zero
     * @param roughness Manning's {@code n}
     */
    public static FullPipe full(Working inside, Working slope, Working roughness) {
        double d = inside.number();
        Worked area = Worked.of(
                "A",
                "area of the pipe",
                Math.PI * d * d / 4,
                Unit.SQUARE_FOOT,
                new Formula("π × " + inside.symbol() + "^2 ÷ 4", "area of a circle"),
                inside);
        Worked radius = Worked.of(
                "R",
                "hydraulic radius, full",
                d / 4,
                Unit.FOOT,
                new Formula(inside.symbol() + " ÷ 4", "area over wetted perimeter of a circle"),
                inside);
        Worked velocity = velocity(FACTOR, roughness, radius, slope);
        Worked cfs = Worked.of(
                "Qc",
                "flow, full",
                velocity.number() * area.number(),
                Unit.CUBIC_FOOT_PER_SECOND,
                new Formula("V × A", "velocity times area"),
                velocity,
                area);
        return new FullPipe(velocity, cfs, Flow.gpm("Q", "flow, full", cfs));
    }

    /**
     * Mean velocity in ft/s in any section.
     *
     * @param factor {@link #FACTOR}, or the one that a published example used
     * @param radius hydraulic radius in feet
     */
    public static Worked velocity(Working factor, Working roughness, Working radius, Working slope) {
        double v =
                factor.number() / roughness.number() * Math.pow(radius.number(), 2.0 / 3) * Math.sqrt(slope.number());
        String formula = factor.symbol() + " ÷ " + roughness.symbol() + " × " + radius.symbol() + "^(2 ÷ 3) × "
                + slope.symbol() + "^(1 ÷ 2)";
        return Worked.of(
                "V",
                "velocity",
                v,
                Unit.FOOT_PER_SECOND,
                new Formula(formula, SOURCE),
                factor,
                roughness,
                radius,
                slope);
    }

    /** Inside diameter in feet of the pipe that just carries a flow in cfs. */
    public static Worked diameter(Working cfs, Working slope, Working roughness) {
        double d = Math.pow(
                cfs.number() * roughness.number() * Math.pow(4, 5.0 / 3) / (K * Math.PI * Math.sqrt(slope.number())),
                3.0 / 8);
        String formula = "(" + cfs.symbol() + " × " + roughness.symbol() + " × 4^(5 ÷ 3) ÷ (k × π × " + slope.symbol()
                + "^(1 ÷ 2)))^(3 ÷ 8)";
        return Worked.of(
                "D",
                "inside diameter that just carries it",
                d,
                Unit.FOOT,
                new Formula(formula, SOURCE),
                cfs,
                roughness,
                FACTOR,
                slope);
    }

    /** Slope in feet per foot at which a full pipe just carries a flow in cfs. */
    public static Worked slope(Working cfs, Working inside, Working roughness) {
        double d = inside.number();
        double s =
                Math.pow(cfs.number() * roughness.number() / (K * Math.PI * d * d / 4 * Math.pow(d / 4, 2.0 / 3)), 2);
        String of = inside.symbol();
        String formula = "(" + cfs.symbol() + " × " + roughness.symbol() + " ÷ (k × π × " + of + "^2 ÷ 4 × (" + of
                + " ÷ 4)^(2 ÷ 3)))^2";
        return Worked.of(
                "S",
                "slope that just carries it",
                s,
                Unit.FOOT_PER_FOOT,
                new Formula(formula, SOURCE),
                cfs,
                roughness,
                FACTOR,
                inside);
    }
}
