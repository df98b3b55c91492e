// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.measure.Unit;
import spadework.water.flow.FullPipe;
import spadework.water.flow.Manning;
import spadework.working.Formula;
import spadework.working.Worked;

/** What flows in a reach, and how much of its capacity that takes. */
public final class Loading {
    private Loading() {}

    static Reach of(Course course, Inflows inflows, Network above) {
        Optional<Range> own = inflows.own(course);
        Optional<Fall> fall = course.kind() == ReachKind.SUMP_DISCHARGE ? Optional.empty() : course.fall();
        Optional<FullPipe> full = fall.filter(f -> f.drop().number() > 0)
                .map(f -> Manning.full(
                        PipeConstants.inside(course.pipe()), f.slope(), PipeConstants.roughness(course.pipe())));
        Optional<Range> inflow = own.flatMap(mine -> above.arriving(course.run())
                .map(arriving -> Range.sum("Q", "flows in " + course.label(), List.of(mine, arriving))));
        return new Reach(
                course.label(),
                course.run(),
                course.kind(),
                course.into(),
                course.pipe(),
                course.length(),
                course.bends(),
                course.stations(),
                fall,
                course.leastSlope(),
                new ReachFlow(full, own, inflow, full.flatMap(f -> inflow.map(in -> share(in, f)))),
                new ReachCover(course.cover(course.first()), course.cover(course.last())));
    }

    private static Worked share(Range inflow, FullPipe full) {
        Worked in = inflow.high().as("Qin");
        return Worked.of(
                "u",
                "share of the capacity used",
                in.number() / full.gpm().number() * 100,
                Unit.PERCENT,
                new Formula("Qin ÷ Q × 100", "high end of the inflow over the full pipe"),
                in,
                full.gpm());
    }
}
