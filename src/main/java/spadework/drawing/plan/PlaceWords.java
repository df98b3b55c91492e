// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.job.Job;
import spadework.job.Side;
import spadework.job.Wall;

/**
 * The side of the house that words of a job point to: by the compass, by one of its walls, or by front and back. Words
 * that point to two sides, or to none, give none: nothing is guessed.
 */
public final class PlaceWords {
    private static final Pattern COMPASS =
            Pattern.compile("\\b(north|east|south|west)(?:ern|ward)?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern WALL = Pattern.compile("\\bwall ([\\p{L}\\p{N}-]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FRONT = Pattern.compile("\\b(front|street|road|curb)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern BACK =
            Pattern.compile("\\b(back(?! up)|rear|backyard)\\b|\\bbehind the house\\b", Pattern.CASE_INSENSITIVE);
    private static final Map<String, Side> SIDES =
            Map.of("north", Side.NORTH, "east", Side.EAST, "south", Side.SOUTH, "west", Side.WEST);

    private final Job job;

    private PlaceWords(Job job) {
        this.job = job;
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
        Set<Side> compass = EnumSet.noneOf(Side.class);
        Matcher found = COMPASS.matcher(words);
        while (found.find()) {
            compass.add(SIDES.get(found.group(1).toLowerCase(Locale.ROOT)));
        }
        if (!compass.isEmpty()) {
            return only(compass);
        }
        Set<Side> walls = EnumSet.noneOf(Side.class);
        Matcher named = WALL.matcher(words);
        while (named.find()) {
            String label = named.group(1);
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

    private static Optional<Side> toward(String words, Side front) {
        boolean ahead = FRONT.matcher(words).find();
        boolean behind = BACK.matcher(words).find();
        if (ahead == behind) {
            return Optional.empty();
        }
        return Optional.of(ahead ? front : opposite(front));
    }

    private Optional<Side> frontByWalls() {
        Set<Side> fronts = EnumSet.noneOf(Side.class);
        for (Wall wall : job.walls()) {
            boolean ahead = FRONT.matcher(wall.where()).find();
            boolean behind = BACK.matcher(wall.where()).find();
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
