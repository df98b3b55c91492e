// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spadework.finding.Finding;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;

/** The stone around the drain and the openings below grade. */
final class EnvelopeRules implements Rule {
    /** Soil over the fabric, so that grass grows and surface water stays out; common practice, no source. */
    private static final Length SOIL_OVER_STONE = Length.ofInches(6);

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (FootingDrain drain : facts.job().water().drains()) {
            StoneProfile.of(facts.job(), facts.book(), drain)
                    .forEach((label, profile) -> found.addAll(stone(facts.job().getWall(label), profile)));
        }
        for (Corner corner : facts.job().corners()) {
            found.addAll(corner(facts.job(), corner));
        }
        for (Wall wall : facts.job().walls()) {
            if (wall.windowWells() > 0) {
                found.add(must("well-drained", wall.label(), Found.PRACTICE));
            }
            if (!wall.openings().isEmpty() && wall.windowWells() == 0) {
                found.add(advise("opening-without-well", wall.label(), Found.PRACTICE));
            }
            boolean drained = facts.job().water().drains().stream()
                    .anyMatch(d -> d.along().contains(wall.label()));
            if (!drained) {
                found.add(advise("wall-undrained", wall.label(), "IRC R405.1 (2009 edition on)"));
            }
        }
        return found;
    }

    /**
     * An outside corner is dug between the ends of two trenches. Pipe and stone go round it only where one drain takes
     * both walls.
     */
    private static List<Finding> corner(Job job, Corner corner) {
        String first = corner.first().wall();
        String second = corner.second().wall();
        List<List<String>> drains =
                job.water().drains().stream().map(FootingDrain::along).toList();
        boolean round = drains.stream().anyMatch(along -> along.contains(first) && along.contains(second));
        boolean drained = drains.stream().anyMatch(along -> along.contains(first) || along.contains(second));
        return Found.when(
                corner.kind() == CornerKind.OUTSIDE && drained && !round,
                must("corner-undrained", first, "IRC R405.1 (2009 edition on)", "other", second));
    }

    /** Soil over the stone where there is least of it; both tops are straight between the stations. */
    private static List<Finding> stone(Wall wall, StoneProfile profile) {
        StoneStation thinnest = profile.stations().stream()
                .min(Comparator.comparingDouble(station -> over(wall, station)))
                .orElseThrow();
        Length over = Length.ofFeet(over(wall, thinnest));
        return Found.when(
                over.feet() < SOIL_OVER_STONE.feet() - 1e-9,
                must(
                        "stone-shallow",
                        wall.label(),
                        "IRC R405.1 (2009 edition on)",
                        "height",
                        Length.ofFeet(thinnest.height()).text(),
                        "over",
                        over.text()));
    }

    private static double over(Wall wall, StoneStation station) {
        double share = station.at() / wall.length().feet();
        double depth = wall.depthStart().feet()
                + (wall.depthEnd().feet() - wall.depthStart().feet()) * share;
        return depth + wall.footing().thickness().feet() - station.height();
    }
}
