// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.Downspout;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SolidRun;
import spadework.measure.Length;
import spadework.water.Reach;
import spadework.water.Station;

/** Where the water may go, and whether it gets out there. */
final class OutletRules implements Rule {
    private static final Length FROM_LOT_LINE = Length.ofFeet(5);
    private static final Length FROM_HOUSE = Length.ofFeet(10);
    private static final double LEVELS = 1e-6;
    private static final String LOCAL = "local discharge ordinances, as Warrenville IL (5 ft from a lot line)";
    private static final String DISCHARGE = "IRC R405.1 (2009 edition on), discharge by gravity or mechanical means";

    @Override
    public List<Finding> check(Facts facts) {
        Job job = facts.job();
        List<Finding> found = new ArrayList<>();
        for (Downspout downspout : job.water().downspouts()) {
            boolean solidLine =
                    job.water().roofLines().stream().map(SolidRun::label).anyMatch(downspout.into()::equals);
            if (!solidLine) {
                found.add(stop(
                        "roof-into-drain",
                        downspout.label(),
                        "Building America Solution Center, foundation drains",
                        "into",
                        downspout.into()));
            }
        }
        for (Outlet outlet : job.water().outlets()) {
            found.addAll(outlet(outlet));
            found.addAll(levels(facts, outlet));
        }
        if (!job.water().outlets().isEmpty()) {
            found.add(must("never-sanitary", "", "local sewer ordinances; IPC 1113 (from memory)"));
        }
        return found;
    }

    private static List<Finding> outlet(Outlet outlet) {
        List<Finding> found = new ArrayList<>();
        if (outlet.kind() == OutletKind.APPROVED_STORM && outlet.permission().isEmpty()) {
            found.add(stop(
                    "storm-unpermitted", outlet.label(), "IRC R405.1 (2009 edition on), approved drainage system"));
        }
        if (outlet.kind() == OutletKind.DAYLIGHT) {
            found.add(must("outlet-guard", outlet.label(), Found.PRACTICE));
        }
        if (outlet.kind() != OutletKind.APPROVED_STORM) {
            found.add(advise("outlet-freezing", outlet.label(), Found.PRACTICE));
            found.addAll(distances(outlet));
        }
        return found;
    }

    private static List<Finding> distances(Outlet outlet) {
        List<Finding> found = new ArrayList<>();
        outlet.fromLotLine()
                .ifPresentOrElse(
                        distance -> found.addAll(Found.when(
                                distance.compareTo(FROM_LOT_LINE) < 0,
                                must("outlet-near-line", outlet.label(), LOCAL, "distance", distance.text()))),
                        () -> found.add(must("outlet-line-unmeasured", outlet.label(), LOCAL)));
        outlet.fromHouse()
                .ifPresentOrElse(
                        distance -> found.addAll(Found.when(
                                distance.compareTo(FROM_HOUSE) < 0,
                                advise(
                                        "outlet-near-house",
                                        outlet.label(),
                                        Found.PRACTICE,
                                        "distance",
                                        distance.text()))),
                        () -> found.add(must("outlet-house-unmeasured", outlet.label(), Found.PRACTICE)));
        return found;
    }

    /** A sump's basin has no level of this kind: its pump lifts the water out. */
    private static List<Finding> levels(Facts facts, Outlet outlet) {
        if (outlet.kind() == OutletKind.SUMP) {
            return List.of();
        }
        List<Finding> found = new ArrayList<>();
        if (outlet.waterLevel().isEmpty()) {
            found.add(must("outlet-water-unmeasured", outlet.label(), DISCHARGE));
        }
        for (Reach reach : facts.network().into(outlet.label())) {
            reach.fall().ifPresent(fall -> {
                double end = fall.end().number();
                outlet.waterLevel()
                        .ifPresent(water -> found.addAll(Found.when(
                                end < water.feet() - LEVELS, below("outlet-below-water", outlet, reach, end, water))));
                outlet.level()
                        .ifPresent(level -> found.addAll(Found.when(
                                end < level.feet() - LEVELS, below("outlet-below-level", outlet, reach, end, level))));
            });
            if (outlet.kind() == OutletKind.DAYLIGHT) {
                found.addAll(ground(outlet, reach));
            }
        }
        return found;
    }

    /** A pipe whose bottom lies under the ground at its end silts up and freezes shut: nothing falls out of it. */
    private static List<Finding> ground(Outlet outlet, Reach reach) {
        Station end = reach.stations().get(reach.stations().size() - 1);
        if (end.ground().isEmpty()) {
            return List.of(must("outlet-ground-unmeasured", outlet.label(), Found.PRACTICE, "run", reach.label()));
        }
        Length ground = end.ground().get();
        return end.invert().stream()
                .filter(invert -> invert.feet() < ground.feet() - LEVELS)
                .map(invert -> must(
                        "outlet-under-ground",
                        outlet.label(),
                        Found.PRACTICE,
                        "run",
                        reach.label(),
                        "end",
                        invert.levelText(),
                        "ground",
                        ground.levelText(),
                        "below",
                        Amounts.feetUp(ground.feet() - invert.feet())))
                .toList();
    }

    private static Finding below(String id, Outlet outlet, Reach reach, double end, Length level) {
        return stop(
                id,
                outlet.label(),
                DISCHARGE,
                "run",
                reach.label(),
                "end",
                Amounts.level(end),
                "level",
                level.levelText(),
                "below",
                Amounts.feetUp(level.feet() - end));
    }
}
