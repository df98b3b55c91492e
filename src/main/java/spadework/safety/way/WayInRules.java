// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.NamedWalls;
import spadework.job.Side;
import spadework.job.Wall;
import spadework.job.WayIn;
import spadework.measure.Length;
import spadework.place.OutlineSpot;

/**
 * How people get into the house and out of it while its walls are dug free. A job that shuts every side, or the front
 * door, says how; a job that does not say is never taken to leave a door.
 */
public final class WayInRules {
    /** A side with so much ground left along it may hold a door: its landing, IRC R311.3, 36 in (from memory). */
    static final Length LANDING = Length.ofInches(36);

    /** From here on a walkway over a trench has rails (29 CFR 1926.651(l), T-21). */
    static final Length RAILS_FROM = Length.ofFeet(6);

    private static final String WALKWAY = "29 CFR 1926.651(l)";
    private static final String PRACTICE = "common practice, no source";
    private static final double NOISE = 1e-6;

    private WayInRules() {}

    public static List<Finding> check(Job job) {
        if (job.walls().isEmpty()) {
            return List.of();
        }
        return job.site().house().wayIn().map(way -> stated(job, way)).orElseGet(() -> unstated(job)).stream()
                .toList();
    }

    /** Nobody wrote the way in; silent only where the front door is known and the ground before it stays. */
    private static Optional<Finding> unstated(Job job) {
        if (isShutAllRound(job)) {
            return Optional.of(must("way-in-shut", labels(job.walls()), Map.of()));
        }
        House house = job.site().house();
        if (house.front().isEmpty() || house.door().isEmpty()) {
            return Optional.of(
                    new Finding("way-in-unwritten", Severity.ADVISE, labels(job.walls()), Map.of(), PRACTICE));
        }
        List<Wall> before = job.walls().stream()
                .filter(wall -> wall.faces() == house.front().get())
                .filter(wall -> isBefore(wall, house.door().get()))
                .toList();
        return before.isEmpty() ? Optional.empty() : Optional.of(must("way-in-front-door", labels(before), Map.of()));
    }

    private static Optional<Finding> stated(Job job, WayIn way) {
        Optional<Wall> named = NamedWalls.only(job, way.door());
        Map<String, String> values = new LinkedHashMap<>(Map.of("door", way.door()));
        return Optional.of(
                switch (way.by()) {
                    case BRIDGE -> bridge(job, named.stream().toList(), values);
                    case WALL_LAST -> must("way-in-last", labels(job.walls()), values);
                    case SIDE_NOT_DUG ->
                        isShutAllRound(job) || named.isPresent()
                                ? must("way-in-not-free", labels(job.walls()), values)
                                : must("way-in-free", labels(job.walls()), values);
                });
    }

    /** @param named the wall at the door; where none is, the deepest of all counts */
    private static Finding bridge(Job job, List<Wall> named, Map<String, String> values) {
        Length depth = (named.isEmpty() ? job.walls() : named)
                .stream()
                        .map(Wall::deepestTrench)
                        .max(Comparator.naturalOrder())
                        .orElseThrow();
        values.put("depth", depth.text());
        return must(needsRails(depth) ? "way-in-bridge" : "way-in-bridge-low", labels(job.walls()), values);
    }

    static boolean needsRails(Length depth) {
        return depth.feet() >= RAILS_FROM.feet() - NOISE;
    }

    /** Whether no side of the house has room left for a door. */
    private static boolean isShutAllRound(Job job) {
        return Arrays.stream(Side.values()).allMatch(side -> widestLeft(job, side) < LANDING.feet() - NOISE);
    }

    /** The longest stretch of a side along which nothing is dug, feet. */
    private static double widestLeft(Job job, Side side) {
        List<Wall> dug = job.walls().stream()
                .filter(wall -> wall.faces() == side)
                .sorted(Comparator.comparing(Wall::from))
                .toList();
        double reached = 0;
        double widest = 0;
        for (Wall wall : dug) {
            widest = Math.max(widest, wall.from().feet() - reached);
            reached = Math.max(reached, wall.from().plus(wall.length()).feet());
        }
        return Math.max(widest, OutlineSpot.sideFeet(job.site().house(), side) - reached);
    }

    /** Whether a door's landing, half of it on each side of the middle, lies over the wall's trench. */
    private static boolean isBefore(Wall wall, Length door) {
        double half = LANDING.feet() / 2;
        return door.feet() + half > wall.from().feet() + NOISE
                && door.feet() - half < wall.from().plus(wall.length()).feet() - NOISE;
    }

    private static String labels(List<Wall> walls) {
        return String.join(", ", walls.stream().map(Wall::label).toList());
    }

    private static Finding must(String id, String about, Map<String, String> values) {
        return new Finding(id, Severity.MUST, about, values, WALKWAY);
    }
}
