// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;

/** Solid pipe as reaches. */
public final class SolidCourses {
    private SolidCourses() {}

    static Course main(Job job, PriceBook book, SolidRun run) {
        String at = "/water/mains/" + job.water().mains().indexOf(run);
        return course(run, ReachKind.MAIN, Pipes.of(run, book, Measure.MAIN_PIPE), at);
    }

    static Course roofLine(Job job, PriceBook book, SolidRun run) {
        String at = "/water/roofLines/" + job.water().roofLines().indexOf(run);
        return course(run, ReachKind.ROOF_LINE, Pipes.of(run, book, Measure.ROOF_PIPE), at);
    }

    /** The discharge pipe of a sump. */
    static Course discharge(Job job, PriceBook book, Outlet outlet, Length length) {
        String at = "/water/outlets/" + job.water().outlets().indexOf(outlet);
        Pipe pipe = Pipes.discharge(book);
        return new Course(
                outlet.label(),
                outlet.label(),
                ReachKind.SUMP_DISCHARGE,
                "",
                pipe,
                measured(length, at + "/discharge"),
                0,
                List.of(
                        new Station(Length.ZERO, Optional.empty(), Optional.empty(), List.of()),
                        new Station(length, Optional.empty(), Optional.empty(), List.of(Joint.OUTLET))),
                at,
                at,
                LeastSlope.solid(pipe));
    }

    private static Course course(SolidRun run, ReachKind kind, Pipe pipe, String at) {
        return new Course(
                run.label(),
                run.label(),
                kind,
                run.into(),
                pipe,
                measured(run.length(), at + "/length"),
                run.bends(),
                List.of(
                        new Station(Length.ZERO, run.startInvert(), run.startGrade(), List.of()),
                        new Station(run.length(), run.endInvert(), run.endGrade(), List.of(Joint.OUTLET))),
                at + "/startInvert",
                at + "/endInvert",
                LeastSlope.solid(pipe));
    }

    private static Worked measured(Length length, String pointer) {
        Given given = Given.of("L", "length of the run", length.feet(), Unit.FOOT, pointer);
        return Worked.of(
                "L",
                "length of the run",
                length.feet(),
                Unit.FOOT,
                new Formula("L", "as measured at the visit"),
                given);
    }
}
