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
        String start = at + "/startInvert";
        String end = at + "/endInvert";
        if (drain.teeAt() == TeeAt.END) {
            return List.of(course(
                    drain, pipe, drain.label(), whole, fromStart, drain.startInvert(), drain.endInvert(), start, end));
        }
        if (drain.teeAt() == TeeAt.START) {
            return List.of(course(
                    drain, pipe, drain.label(), whole, fromEnd, drain.endInvert(), drain.startInvert(), end, start));
        }
        Worked half = Worked.of(
                "Lh",
                "one side of the drain",
                whole.number() / 2,
                Unit.FOOT,
                "Lp ÷ 2",
                "the tee stands in the middle",
                whole);
        String tee = at + "/teeInvert";
        return List.of(
                course(
                        drain,
                        pipe,
                        drain.label() + "/1",
                        half,
                        Profile.upTo(fromStart, half.number()),
                        drain.startInvert(),
                        drain.teeInvert(),
                        start,
                        tee),
                course(
                        drain,
                        pipe,
                        drain.label() + "/2",
                        half,
                        Profile.upTo(fromEnd, half.number()),
                        drain.endInvert(),
                        drain.teeInvert(),
                        end,
                        tee));
    }

    private static Course course(
            FootingDrain drain,
            Pipe pipe,
            String label,
            Worked length,
            List<Station> places,
            Optional<Length> start,
            Optional<Length> end,
            String startAt,
            String endAt) {
        List<Station> stations = Profile.withInverts(places, start, end);
        long cleanouts = Math.max(1, (long) Math.ceil(length.number() / DrainLength.CLEANOUT_FEET - 1e-9));
        for (int i = 0; i < cleanouts; i++) {
            stations = Profile.withJoint(stations, length.number() * i / cleanouts, Joint.CLEANOUT);
        }
        stations = Profile.withJoint(stations, length.number(), Joint.TEE);
        return new Course(
                label,
                drain.label(),
                ReachKind.DRAIN,
                drain.into(),
                pipe,
                length,
                0,
                stations,
                startAt,
                endAt,
                LeastSlope.drain());
    }
}
