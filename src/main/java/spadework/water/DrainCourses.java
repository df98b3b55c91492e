// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Worked;

/** A footing drain as reaches toward its tee: one, or one from each side where the tee is in the middle. */
public final class DrainCourses {
    private DrainCourses() {}

    static List<Course> of(Job job, PriceBook book, FootingDrain drain) {
        Worked whole = DrainLength.of(job, drain);
        List<Station> fromStart = DrainGround.stations(job, drain);
        List<Station> fromEnd = Profile.reversed(fromStart, whole.number());
        String at = "/water/drains/" + job.water().drains().indexOf(drain);
        Pipe pipe = Pipes.of(drain, book);
        DrainEnd start = new DrainEnd(drain.startInvert(), at + "/startInvert");
        DrainEnd end = new DrainEnd(drain.endInvert(), at + "/endInvert");
        if (drain.teeAt() == TeeAt.END) {
            return List.of(course(drain, pipe, new DrainSide(drain.label(), whole, fromStart), start, end));
        }
        if (drain.teeAt() == TeeAt.START) {
            return List.of(course(drain, pipe, new DrainSide(drain.label(), whole, fromEnd), end, start));
        }
        Worked half = Worked.of(
                "Lh",
                "one side of the drain",
                whole.number() / 2,
                Unit.FOOT,
                new Formula("Lp ÷ 2", "the tee stands in the middle"),
                whole);
        DrainEnd tee = new DrainEnd(drain.teeInvert(), at + "/teeInvert");
        DrainSide first = new DrainSide(drain.label() + "/1", half, Profile.upTo(fromStart, half.number()));
        DrainSide second = new DrainSide(drain.label() + "/2", half, Profile.upTo(fromEnd, half.number()));
        return List.of(course(drain, pipe, first, start, tee), course(drain, pipe, second, end, tee));
    }

    /** An end of a side of a drain, and where the job states its invert. */
    private record DrainEnd(Optional<Length> invert, String pointer) {}

    /** A drain, or its part on one side of the tee. */
    private record DrainSide(String label, Worked length, List<Station> stations) {}

    private static Course course(FootingDrain drain, Pipe pipe, DrainSide side, DrainEnd from, DrainEnd to) {
        Worked length = side.length();
        List<Station> stations = Profile.withInverts(side.stations(), new Profile.Inverts(from.invert(), to.invert()));
        long cleanouts = Math.max(1, (long) Math.ceil(length.number() / DrainLength.CLEANOUT_FEET - 1e-9));
        for (int i = 0; i < cleanouts; i++) {
            stations = Profile.withJoint(stations, length.number() * i / cleanouts, Joint.CLEANOUT);
        }
        stations = Profile.withJoint(stations, length.number(), Joint.TEE);
        return new Course(
                side.label(),
                drain.label(),
                ReachKind.DRAIN,
                drain.into(),
                pipe,
                length,
                0,
                stations,
                from.pointer(),
                to.pointer(),
                LeastSlope.drain());
    }
}
