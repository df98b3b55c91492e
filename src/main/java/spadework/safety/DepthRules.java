// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.ground.StoneProfile;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.measure.Length;
import spadework.pricebook.Pipe;
import spadework.water.FootingBottom;
import spadework.water.Pipes;
import spadework.working.Worked;

/** Whether a footing drain lies low enough to protect the floor and not too low for the footing. */
final class DepthRules implements Rule {
    private static final double LEVELS = 1e-6;
    private static final String R405 = "IRC R405.1 (2009 edition on)";
    private static final String BASE = "VA drainage manual, never lower than the base of the footing; IRC R405.1";

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (FootingDrain drain : facts.job().water().drains()) {
            found.addAll(floor(facts.job(), drain));
            found.addAll(footing(facts, drain));
            Pipe pipe = Pipes.of(drain, facts.book());
            drain.startInvert()
                    .ifPresent(invert -> drain.startGrade()
                            .ifPresent(grade -> found.addAll(ground(drain, "start", invert, grade, pipe))));
            drain.endInvert()
                    .ifPresent(invert -> drain.endGrade()
                            .ifPresent(grade -> found.addAll(ground(drain, "end", invert, grade, pipe))));
        }
        return found;
    }

    /** Levels that cannot both be right: the ground lies no higher than the top of the pipe under it. */
    private static List<Finding> ground(FootingDrain drain, String where, Length invert, Length grade, Pipe pipe) {
        double top = invert.feet() + (pipe.outside().feet() + pipe.inside().feet()) / 2;
        return Found.when(
                grade.feet() <= top + LEVELS,
                stop(
                        "drain-over-ground",
                        drain.label(),
                        Found.PRACTICE,
                        "where",
                        where,
                        "invert",
                        invert.levelText(),
                        "grade",
                        grade.levelText()));
    }

    private static List<Finding> floor(Job job, FootingDrain drain) {
        Optional<Length> high = Stream.of(drain.startInvert(), drain.endInvert(), drain.teeInvert())
                .flatMap(Optional::stream)
                .max(Length::compareTo);
        if (high.isEmpty()) {
            return List.of();
        }
        if (job.site().insideFloor().isEmpty()) {
            return List.of(must("floor-unmeasured", drain.label(), R405));
        }
        Length floor = job.site().insideFloor().get();
        return Found.when(
                high.get().compareTo(floor) > 0,
                stop(
                        "drain-above-floor",
                        drain.label(),
                        R405,
                        "high",
                        high.get().levelText(),
                        "floor",
                        floor.levelText()));
    }

    private static List<Finding> footing(Facts facts, FootingDrain drain) {
        FootingBottom bottom = FootingBottom.of(facts.job(), drain);
        List<Finding> found = new ArrayList<>();
        if (bottom.start().isEmpty() || bottom.end().isEmpty()) {
            found.add(must("footing-level-unknown", drain.label(), BASE));
        }
        Optional<Worked> higher = Stream.of(bottom.start(), bottom.end())
                .flatMap(Optional::stream)
                .max((a, b) -> Double.compare(a.number(), b.number()));
        Pipe pipe = Pipes.of(drain, facts.book());
        drain.startInvert()
                .ifPresent(invert ->
                        bottom.start().ifPresent(base -> found.addAll(place(drain, "start", invert, base, pipe))));
        drain.endInvert()
                .ifPresent(invert ->
                        bottom.end().ifPresent(base -> found.addAll(place(drain, "end", invert, base, pipe))));
        drain.teeInvert()
                .ifPresent(invert -> higher.ifPresent(base -> found.addAll(place(drain, "tee", invert, base, pipe))));
        return found;
    }

    private static List<Finding> place(FootingDrain drain, String where, Length invert, Worked bottom, Pipe pipe) {
        double level = invert.feet();
        double base = bottom.number();
        double wall = (pipe.outside().feet() - pipe.inside().feet()) / 2;
        String[] values = {
            "where",
            where,
            "invert",
            Amounts.level(level),
            "bottom",
            Amounts.level(base),
            "below",
            Amounts.feetUp(base - level),
            "least",
            Amounts.levelUp(base + StoneProfile.BEDDING + wall)
        };
        if (level < base - LEVELS) {
            return List.of(stop("invert-below-footing", drain.label(), BASE, values));
        }
        return Found.when(
                level - wall - StoneProfile.BEDDING < base - LEVELS,
                must("stone-under-thin", drain.label(), R405, values));
    }
}
