package spadework.safety;

import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.SolidRun;
import spadework.measure.Length;

/** Whether the pipes fall, and whether the drain lies low enough. */
final class FallRules implements Rule {
    /** 1/8 in a foot for pipe of 3 to 6 in (Chicago Table 18-29-704.1, as IPC 704.1; G-03). */
    private static final double LEAST_SLOPE = 0.125 / 12;

    private static final String SLOPE = "IPC 704.1 as in Chicago Table 18-29-704.1";

    @Override
    public List<Finding> check(Facts facts) {
        Job job = facts.job();
        List<Finding> found = new ArrayList<>();
        for (SolidRun run : job.water().mains()) {
            found.addAll(solid(run));
        }
        for (SolidRun run : job.water().roofLines()) {
            found.addAll(solid(run));
        }
        for (FootingDrain drain : job.water().drains()) {
            found.addAll(drain(job, drain));
        }
        return found;
    }

    private static List<Finding> solid(SolidRun run) {
        if (run.startInvert().isEmpty() || run.endInvert().isEmpty()) {
            return List.of(must("levels-unmeasured", run.label(), SLOPE));
        }
        double fall = run.startInvert().get().minus(run.endInvert().get()).feet();
        if (fall <= 0) {
            return List.of(stop("back-pitch", run.label(), SLOPE,
                    "start", run.startInvert().get().levelText(), "end", run.endInvert().get().levelText()));
        }
        double slope = fall / run.length().feet();
        return Found.when(slope < LEAST_SLOPE - 1e-9, must("too-flat", run.label(), SLOPE,
                "slope", percent(slope), "least", percent(LEAST_SLOPE), "fall", Length.ofFeet(fall).text(),
                "length", run.length().text()));
    }

    private static List<Finding> drain(Job job, FootingDrain drain) {
        List<Finding> found = new ArrayList<>();
        Optional<Length> start = drain.startInvert();
        Optional<Length> end = drain.endInvert();
        if (start.isEmpty() || end.isEmpty()) {
            found.add(must("levels-unmeasured", drain.label(), "IRC R405.1"));
            return found;
        }
        boolean backward = switch (drain.teeAt()) {
            case END -> end.get().compareTo(start.get()) > 0;
            case START -> start.get().compareTo(end.get()) > 0;
            case MIDDLE -> false;
        };
        if (backward) {
            found.add(stop("back-pitch", drain.label(), "VA drainage manual; code handouts ask 4 in a 100 ft",
                    "start", start.get().levelText(), "end", end.get().levelText()));
        }
        Length high = start.get().compareTo(end.get()) >= 0 ? start.get() : end.get();
        if (job.site().insideFloor().isEmpty()) {
            found.add(must("floor-unmeasured", drain.label(), "IRC R405.1"));
        } else if (high.compareTo(job.site().insideFloor().get()) > 0) {
            found.add(stop("drain-above-floor", drain.label(), "IRC R405.1", "high", high.levelText(),
                    "floor", job.site().insideFloor().get().levelText()));
        }
        return found;
    }

    private static String percent(double slope) {
        return String.format(Locale.ROOT, "%.2f %%", slope * 100);
    }
}
