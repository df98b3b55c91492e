// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.FootingDrain;
import spadework.job.TeeAt;
import spadework.water.Fall;
import spadework.water.LeastSlope;
import spadework.water.Reach;
import spadework.water.ReachKind;

/** Whether every pipe falls, and enough. */
final class FallRules implements Rule {
    private static final double LEVELS = 1e-6;
    private static final String SUBDRAIN =
            "common practice, no source; UFC 3-270-04 section 12.6 asks for 0.15% at least";

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Reach reach : facts.network().reaches()) {
            if (reach.kind() != ReachKind.SUMP_DISCHARGE) {
                found.addAll(reach.fall()
                        .map(fall -> reach.kind() == ReachKind.DRAIN ? drain(reach, fall) : solid(reach, fall))
                        .orElseGet(() -> List.of(unmeasured(facts, reach))));
                found.addAll(joins(facts, reach));
            }
        }
        return found;
    }

    private static Finding unmeasured(Facts facts, Reach reach) {
        boolean tee = facts.job().water().drains().stream()
                .anyMatch(drain -> drain.label().equals(reach.run()) && lacksOnlyTheTee(drain));
        return tee
                ? must("tee-unmeasured", reach.label(), Found.PRACTICE)
                : must(
                        "levels-unmeasured",
                        reach.label(),
                        reach.kind() == ReachKind.DRAIN ? "IRC R405.1 (2009 edition on)" : LeastSlope.SOLID_SOURCE);
    }

    private static boolean lacksOnlyTheTee(FootingDrain drain) {
        return drain.teeAt() == TeeAt.MIDDLE
                && drain.teeInvert().isEmpty()
                && drain.startInvert().isPresent()
                && drain.endInvert().isPresent();
    }

    private static List<Finding> solid(Reach reach, Fall fall) {
        double least = reach.leastSlope().number();
        if (fall.drop().number() <= LEVELS) {
            return List.of(backPitch(reach, fall, least, LeastSlope.SOLID_SOURCE));
        }
        return Found.when(
                fall.slope().number() < least - LEVELS,
                must("too-flat", reach.label(), LeastSlope.SOLID_SOURCE, flat(reach, fall, least)));
    }

    private static List<Finding> drain(Reach reach, Fall fall) {
        double slope = fall.slope().number();
        if (fall.drop().number() < -LEVELS) {
            return List.of(backPitch(
                    reach, fall, LeastSlope.DRAIN_FLOOR, "VA drainage manual; code handouts ask 4 in a 100 ft"));
        }
        if (slope < LeastSlope.DRAIN_FLOOR - LEVELS) {
            return List.of(must("drain-flat", reach.label(), SUBDRAIN, flat(reach, fall, LeastSlope.DRAIN_FLOOR)));
        }
        return Found.when(
                slope < LeastSlope.DRAIN_TARGET - LEVELS,
                advise(
                        "drain-under-target",
                        reach.label(),
                        Found.PRACTICE,
                        flat(reach, fall, LeastSlope.DRAIN_TARGET)));
    }

    private static Finding backPitch(Reach reach, Fall fall, double least, String citation) {
        return stop(
                "back-pitch",
                reach.label(),
                citation,
                "start",
                Amounts.level(fall.start().number()),
                "end",
                Amounts.level(fall.end().number()),
                "low",
                Amounts.levelDown(fall.start().number() - least * reach.length().number()));
    }

    private static String[] flat(Reach reach, Fall fall, double least) {
        double wanted = least * reach.length().number();
        return new String[] {
            "slope",
            Amounts.slope(fall.slope().number()),
            "least",
            Amounts.slope(least),
            "fall",
            Amounts.feet(fall.drop().number()),
            "length",
            Amounts.feet(reach.length().number()),
            "more",
            Amounts.feetUp(wanted - fall.drop().number()),
            "low",
            Amounts.levelDown(fall.start().number() - wanted)
        };
    }

    /** Water that comes out lower than the next pipe begins stands in the drain. */
    private static List<Finding> joins(Facts facts, Reach reach) {
        List<Finding> found = new ArrayList<>();
        for (Reach above : facts.network().into(reach.run())) {
            if (above.fall().isPresent() && reach.fall().isPresent()) {
                double out = above.fall().get().end().number();
                double in = reach.fall().get().start().number();
                found.addAll(Found.when(
                        in > out + LEVELS,
                        stop(
                                "joins-uphill",
                                reach.label(),
                                Found.PRACTICE,
                                "above",
                                above.label(),
                                "out",
                                Amounts.level(out),
                                "in",
                                Amounts.level(in),
                                "step",
                                Amounts.feetUp(in - out))));
            }
        }
        return found;
    }
}
