// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.Catchment;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.measure.Unit;
import spadework.water.flow.Flow;
import spadework.water.flow.Rational;
import spadework.water.flow.Roof;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;

/** What comes into a pipe along its own length: roof water, runoff from uphill, seepage. */
public final class Inflows {
    private final Job job;

    Inflows(Job job) {
        this.job = job;
    }

    /** In gpm; empty where the rain is needed for it and the job does not give it. */
    Optional<Range> own(Course course) {
        List<Downspout> spouts = job.water().downspouts().stream()
                .filter(spout -> spout.into().equals(course.run()))
                .toList();
        Optional<Catchment> catchment =
                job.site().catchment().filter(c -> c.into().equals(course.run()));
        boolean discharge = course.kind() == ReachKind.SUMP_DISCHARGE;
        boolean rains = !discharge && (!spouts.isEmpty() || catchment.isPresent());
        if (rains && job.site().rain().isEmpty()) {
            return Optional.empty();
        }
        List<Range> parts = new ArrayList<>();
        if (rains) {
            spouts.forEach(spout -> parts.add(Range.of(roof(spout))));
            catchment.ifPresent(c -> parts.add(Range.of(runoff(c))));
        }
        if (course.kind() == ReachKind.DRAIN) {
            parts.add(seepage(course));
        }
        return Optional.of(Range.sum("Qo", "comes into " + course.label(), parts));
    }

    private Worked roof(Downspout spout) {
        Given area = Given.of(
                "A",
                "roof that drains to " + spout.label(),
                spout.roof().squareFeet(),
                Unit.SQUARE_FOOT,
                "/water/downspouts/" + job.water().downspouts().indexOf(spout) + "/roof");
        return Roof.flow(area, rain());
    }

    private Worked runoff(Catchment catchment) {
        Given area = Given.of(
                "A",
                "ground that drains there",
                catchment.area().squareFeet(),
                Unit.SQUARE_FOOT,
                "/site/catchment/area");
        Given c = new Given("C", "share that runs off", catchment.runoff(), Unit.NONE, "/site/catchment/runoff");
        return Flow.gpm("Qg", "runoff", Rational.flow(c, rain(), Rational.acres(area)));
    }

    private Given rain() {
        return Given.of(
                "i",
                "rain",
                job.site().rain().orElseThrow().intensity().inchesPerHour(),
                Unit.INCH_PER_HOUR,
                "/site/rain/intensity");
    }

    /** Every wall of the drain by itself; half of all of them for one side of a drain with its tee in the middle. */
    private Range seepage(Course course) {
        FootingDrain drain = job.water().drains().stream()
                .filter(d -> d.label().equals(course.run()))
                .findFirst()
                .orElseThrow();
        List<Range> walls = drain.along().stream()
                .map(label -> SeepageInflow.intoDrain(job, job.getWall(label)))
                .toList();
        Range whole = Range.sum("Qs", "seepage into " + drain.label(), walls);
        return drain.teeAt() == TeeAt.MIDDLE ? new Range(half(whole.low()), half(whole.high())) : whole;
    }

    private static Worked half(Worked whole) {
        return Worked.of(
                "Qh",
                "seepage on one side of the tee",
                whole.number() / 2,
                Unit.GALLON_PER_MINUTE,
                new Formula("Qs ÷ 2", "the tee stands in the middle"),
                whole);
    }
}
