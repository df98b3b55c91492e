// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.job.Job;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.water.flow.Darcy;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * Groundwater that a footing drain takes in, always as a range. Dupuit's flow from one side to a drain that keeps its
 * own water down, q = K × h² ÷ (2 × L) (H-32), written as Darcy's K × i × A (H-33) with the mean gradient h ÷ L and
 * the mean height h ÷ 2.
 *
 * <p>Assumed, as common practice without a source: at the high end the water stands at grade and falls to the drain
 * within the depth of the trench; at the low end it stands at half the depth and falls within four depths. Cracks, old
 * pipe trenches and roof water beside the wall can bring more than that.
 */
public final class SeepageInflow {
    private static final String ASSUMED = "assumed; common practice, no source";
    private static final double GALLONS_PER_CUBIC_FOOT = 7.48052;

    private SeepageInflow() {}

    /** Into the drain along one wall, gpm. */
    public static Range intoDrain(Job job, Wall wall) {
        String at = "/walls/" + job.indexOfWall(wall.label());
        Given length =
                Given.of("L", "length of wall " + wall.label(), wall.length().feet(), Unit.FOOT, at + "/length");
        Given start = Given.of(
                "dt0",
                "depth to the footing's top at the start",
                wall.depthStart().feet(),
                Unit.FOOT,
                at + "/depth");
        Given end = Given.of(
                "dt1", "depth to the footing's top at the end", wall.depthEnd().feet(), Unit.FOOT, at + "/depth");
        Given footing = Given.of(
                "tf",
                "thickness of the footing",
                wall.footing().thickness().feet(),
                Unit.FOOT,
                at + "/footing/thickness");
        Worked depth = Worked.of(
                "H",
                "mean depth of the trench",
                (start.number() + end.number()) / 2 + footing.number(),
                Unit.FOOT,
                new Formula("(dt0 + dt1) ÷ 2 + tf", "mean of both ends"),
                start,
                end,
                footing);
        Range perFoot = perFoot(
                Permeability.of(job.site().soil().texture(), job.site().soil().seepage()), depth);
        return new Range(along(perFoot.low(), length), along(perFoot.high(), length));
    }

    /**
     * Into the drain for each foot of wall, gpm a foot.
     *
     * @param depth grade to the bottom of the trench in feet
     */
    public static Range perFoot(Texture texture, Working depth) {
        return perFoot(Permeability.of(texture), depth);
    }

    private static Range perFoot(Permeability k, Working depth) {
        return new Range(
                perFoot("low end", k.low(), k.source(), depth, 0.5, 0.125),
                perFoot("high end", k.high(), k.source(), depth, 1, 1));
    }

    private static Worked perFoot(
            String end, double inches, String source, Working depth, double standing, double steepness) {
        Listed conductivity = Listed.of("K", "flow through saturated soil, " + end, inches, Unit.INCH_PER_HOUR, source);
        Listed high = Listed.of("w", "water stands at this share of the depth", standing, Unit.NONE, ASSUMED);
        Listed gradient =
                Listed.of("i", "mean fall of the water toward the drain", steepness, Unit.FOOT_PER_FOOT, ASSUMED);
        Worked area = Worked.of(
                "A",
                "mean height of the water, a foot long",
                standing * depth.number() / 2,
                Unit.SQUARE_FOOT,
                new Formula("w × " + depth.symbol() + " ÷ 2", "mean of h and 0 (H-32)"),
                high,
                depth);
        Worked feet = Worked.of(
                "Kf",
                "the same in feet",
                inches / 12,
                Unit.FOOT_PER_HOUR,
                new Formula("K ÷ 12", "12 in a foot"),
                conductivity);
        Worked flow = Darcy.flow(feet, gradient, area, Unit.CUBIC_FOOT);
        return Worked.of(
                "q1",
                "seepage for each foot of wall, " + end,
                flow.number() * GALLONS_PER_CUBIC_FOOT / 60,
                Unit.GALLON_PER_MINUTE_PER_FOOT,
                new Formula(
                        "q × " + GALLONS_PER_CUBIC_FOOT + " ÷ 60", "7.48052 gal in a cubic foot, 60 min in an hour"),
                flow);
    }

    private static Worked along(Worked perFoot, Given length) {
        return Worked.of(
                "Qw",
                "seepage along the wall",
                perFoot.number() * length.number(),
                Unit.GALLON_PER_MINUTE,
                new Formula("q1 × L", "per foot times length"),
                perFoot,
                length);
    }
}
