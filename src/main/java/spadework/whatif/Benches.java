// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;

/**
 * The soil that benches take out beyond the slope of 1:1: steps at most 4 ft high, each of which lies wholly behind
 * the line of the slope, so that it is never steeper. 29 CFR 1926 Subpart P App. B, figure B-1.2 (from memory).
 */
final class Benches {
    private static final double HIGHEST = 4;

    private Benches() {}

    /** More soil than the slope, bank cubic yards: L × s × (n × b² + r²) ÷ 2 ÷ 27. */
    static Worked of(Wall wall, double slope) {
        double depth = wall.deepestTrench().feet();
        double steps = Math.floor(depth / HIGHEST);
        double rest = depth - steps * HIGHEST;
        double feet = wall.length().feet();
        double value = feet * slope * (steps * HIGHEST * HIGHEST + rest * rest) / 2 / 27;
        return Worked.of(
                "V",
                "cut for benches",
                value,
                Unit.CUBIC_YARD,
                new Formula(
                        "L × s × (n × b ^ 2 + r ^ 2) ÷ 2 ÷ 27",
                        "29 CFR 1926 Subpart P App. B figure B-1.2 (from memory)"),
                Given.of("L", "length of the wall", feet, Unit.FOOT, wall.label()),
                Listed.of("s", "slope", slope, Unit.FOOT_PER_FOOT, "29 CFR 1926 Subpart P App. B Table B-1"),
                Listed.of("n", "whole steps", steps, Unit.NONE, "depth over 4 ft"),
                Listed.of("b", "height of a step", HIGHEST, Unit.FOOT, "figure B-1.2 (from memory)"),
                Listed.of("r", "height of the last step", rest, Unit.FOOT, "what is left"));
    }
}
