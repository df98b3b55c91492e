// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.List;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.ground.PitOverlap;
import spadework.ground.RunOverlap;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;

/**
 * The topsoil that is laid back over what was dug: the fill under it stops that much lower. Topsoil goes evenly over
 * the ground that was dug and the strip that is graded, 10 ft out from the wall, so far as it reaches.
 *
 * @param area that gets topsoil, square feet
 * @param depth of the topsoil, feet
 * @param filled ground that is filled or graded, square feet
 */
record TopsoilShare(Given area, Given depth, Given filled) {
    private static final double GRADED_OUT = 10;

    static TopsoilShare of(Job job) {
        List<DigBody> bodies = DigBodies.of(job);
        double dug = bodies.stream()
                .filter(body -> body.kind() != BodyKind.TEST_PIT && body.kind() != BodyKind.WINDOW_WELL)
                .mapToDouble(DigBody::areaAtGrade)
                .sum();
        double twice = job.water().outlets().stream()
                        .filter(outlet -> outlet.kind() == OutletKind.SUMP)
                        .flatMap(outlet -> PitOverlap.of(job, outlet).stream())
                        .mapToDouble(PitOverlap::areaAtGrade)
                        .sum()
                + RunOverlap.areaAtGrade(job);
        double graded = job.restoration().regrade().feet() * GRADED_OUT;
        return new TopsoilShare(
                Given.of(
                        "a",
                        "area that gets topsoil",
                        job.restoration().topsoil().squareFeet(),
                        Unit.SQUARE_FOOT,
                        "/restoration/topsoil"),
                Given.of(
                        "h",
                        "depth of topsoil",
                        job.restoration().topsoilDepth().feet(),
                        Unit.FOOT,
                        "/restoration/topsoilDepth"),
                Given.of(
                        "Af",
                        "ground dug, or graded where that is more",
                        Math.max(dug - twice, graded),
                        Unit.SQUARE_FOOT,
                        "outlines of all that is dug; 10 ft along /restoration/regrade"));
    }

    /** Topsoil over so many square feet of filled ground, cubic yards. */
    Worked over(String symbol, double squareFeet) {
        Given here = Given.of("Ah", "ground filled here", squareFeet, Unit.SQUARE_FOOT, "outline at grade");
        double share = filled.number() > 0 ? Math.min(1, area.number() / filled.number()) : 0;
        String part = filled.number() > 0 ? "min(1, a ÷ Af) × Ah × h ÷ 27" : "0 × a × Af × Ah × h";
        return Worked.of(
                symbol,
                "topsoil laid back over it",
                share * squareFeet * depth.number() / 27,
                Unit.CUBIC_YARD,
                new Formula(part, "the fill stops below the topsoil"),
                area,
                filled,
                here,
                depth);
    }

    /** All topsoil that lies on filled or graded ground, cubic yards. */
    Worked inAll(String symbol) {
        return over(symbol, filled.number());
    }
}
