// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Corner;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.measure.Length;
import spadework.water.Leg;

/** Whether two walls that meet agree about their corner: it has one level of the ground and one footing. */
final class CornerRules implements Rule {
    /** What two readings of one place may differ by, feet: an inch, common practice, no source. */
    private static final double READING = 1.0 / 12;

    private static final double NOISE = 1e-6;

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Corner corner : facts.job().corners()) {
            ground(facts.job(), corner).or(() -> depth(facts.job(), corner)).ifPresent(found::add);
        }
        return found;
    }

    /** Two levels of the ground that were shot at one corner, highest and lowest. */
    private static Optional<Finding> ground(Job job, Corner corner) {
        List<Length> first = grades(job, corner.first());
        List<Length> second = grades(job, corner.second());
        List<Length> all = new ArrayList<>(first);
        all.addAll(second);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Length high = all.stream().max(Length::compareTo).orElseThrow();
        Length low = all.stream().min(Length::compareTo).orElseThrow();
        double apart = high.feet() - low.feet();
        return apart <= READING + NOISE
                ? Optional.empty()
                : Optional.of(must(
                        "corner-ground-differs",
                        corner.first().wall(),
                        Found.PRACTICE,
                        "other",
                        corner.second().wall(),
                        "high",
                        high.levelText(),
                        "low",
                        low.levelText(),
                        "apart",
                        Amounts.feetUp(apart)));
    }

    /** The ground's levels that were shot at the end of a wall, by the drains that start or end there. */
    private static List<Length> grades(Job job, WallEnd end) {
        List<Length> grades = new ArrayList<>();
        for (FootingDrain drain : job.water().drains()) {
            List<Leg> legs = Leg.of(job, drain);
            Leg first = legs.get(0);
            Leg last = legs.get(legs.size() - 1);
            if (end.equals(new WallEnd(first.wall().label(), first.backward()))) {
                drain.startGrade().ifPresent(grades::add);
            }
            if (end.equals(new WallEnd(last.wall().label(), !last.backward()))) {
                drain.endGrade().ifPresent(grades::add);
            }
        }
        return grades;
    }

    /** From one ground down to one footing, two walls are equally deep at their corner. */
    private static Optional<Finding> depth(Job job, Corner corner) {
        double first = depth(job, corner.first());
        double second = depth(job, corner.second());
        double apart = Math.abs(first - second);
        return apart <= READING + NOISE
                ? Optional.empty()
                : Optional.of(must(
                        "corner-depth-differs",
                        corner.first().wall(),
                        Found.PRACTICE,
                        "other",
                        corner.second().wall(),
                        "depth",
                        Amounts.feet(first),
                        "otherDepth",
                        Amounts.feet(second),
                        "apart",
                        Amounts.feetUp(apart)));
    }

    /** From the ground to the bottom of the footing at the end of a wall, feet. */
    private static double depth(Job job, WallEnd end) {
        Wall wall = job.getWall(end.wall());
        Length top = end.atEnd() ? wall.depthEnd() : wall.depthStart();
        return top.plus(wall.footing().thickness()).feet();
    }
}
