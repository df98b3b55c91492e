// SPDX-License-Identifier: Apache-2.0
package spadework.place;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import spadework.job.Job;
import spadework.job.Side;
import spadework.job.Wall;

/**
 * The side of the house that words of a job point to: by the compass, by one of its walls, or by front and back, in
 * English or in the language of its papers. Words that point to two sides, or to none, give none: nothing is guessed.
 */
public final class PlaceWords {
    private final Job job;
    private final PlaceSayings sayings;

    private PlaceWords(Job job) {
        this.job = job;
        this.sayings = PlaceSayings.in(job.head().language());
    }

    /** The side toward the street: as the job gives it, or as the words of its walls have it. */
    public static Optional<Side> front(Job job) {
        Optional<Side> given = job.site().house().front();
        return given.isPresent() ? given : new PlaceWords(job).frontByWalls();
    }

    /** The side that the words point to. */
    public static Optional<Side> side(Job job, String words) {
        return new PlaceWords(job).side(words);
    }

    private Optional<Side> side(String words) {
        Set<Side> compass = sayings.sides(words);
        if (!compass.isEmpty()) {
            return only(compass);
        }
        Set<Side> walls = EnumSet.noneOf(Side.class);
        Matcher named = sayings.wall().matcher(words);
        while (named.find()) {
            String label = PlaceSayings.label(named);
            job.walls().stream()
                    .filter(wall -> wall.label().equalsIgnoreCase(label))
                    .map(Wall::faces)
                    .forEach(walls::add);
        }
        if (!walls.isEmpty()) {
            return only(walls);
        }
        Set<Side> fronts = EnumSet.noneOf(Side.class);
        front(job).ifPresent(front -> toward(words, front).ifPresent(fronts::add));
        return only(fronts);
    }

    private Optional<Side> toward(String words, Side front) {
        boolean ahead = sayings.front().matcher(words).find();
        boolean behind = sayings.back().matcher(words).find();
        if (ahead == behind) {
            return Optional.empty();
        }
        return Optional.of(ahead ? front : opposite(front));
    }

    private Optional<Side> frontByWalls() {
        Set<Side> fronts = EnumSet.noneOf(Side.class);
        for (Wall wall : job.walls()) {
            boolean ahead = sayings.front().matcher(wall.where()).find();
            boolean behind = sayings.back().matcher(wall.where()).find();
            if (ahead && !behind) {
                fronts.add(wall.faces());
            } else if (behind && !ahead) {
                fronts.add(opposite(wall.faces()));
            }
        }
        return only(fronts);
    }

    static Side opposite(Side side) {
        return Side.values()[(side.ordinal() + 2) % Side.values().length];
    }

    private static Optional<Side> only(Set<Side> sides) {
        return sides.size() == 1 ? Optional.of(sides.iterator().next()) : Optional.empty();
    }
}
