// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.job.Wall;
import spadework.measure.Length;

/**
 * A sheet that hangs down a wall is sold in rolls of a width and a length. By area what is left of a roll's width
 * counts as sheet, but it is a strip too narrow to hang: rolls are counted along the walls.
 *
 * @param width of the roll, feet: as high as one course
 * @param length of the roll, feet
 */
public record SheetRolls(double width, double length) {
    /** How far a roll lies over the one before it. */
    public static final Length LAP = Length.ofInches(6);

    public static final String SOURCE = "common practice, no source";

    private static final Pattern SIZES = Pattern.compile("(\\d+(?:\\.\\d+)?) ft x (\\d+(?:\\.\\d+)?) ft roll\\b.*");
    private static final double NOISE = 1e-6;

    /** The sizes that a package has in its name, as {@code 6.5 ft x 65 ft roll}; empty where it has none. */
    public static Optional<SheetRolls> of(String sold) {
        Matcher sizes = SIZES.matcher(sold);
        return sizes.matches()
                ? Optional.of(new SheetRolls(Double.parseDouble(sizes.group(1)), Double.parseDouble(sizes.group(2))))
                : Optional.empty();
    }

    /**
     * Feet of roll along the walls, without laps: a wall higher than the roll is wide takes several courses; of one no
     * higher than half of it a roll hangs in several strips. Round a corner the sheet goes on.
     */
    public double along(List<Wall> walls) {
        double feet = 0;
        for (Wall wall : walls) {
            double height =
                    Math.max(wall.depth().start().feet(), wall.depth().end().feet());
            double courses = Math.ceil(height / width - NOISE);
            double strips = courses > 1 ? 1 : Math.floor(width / height + NOISE);
            feet += wall.length().feet() * courses / strips;
        }
        return feet;
    }

    /** Whole rolls for so many feet, each lapped over the one before. */
    public int count(double feet) {
        double lap = LAP.feet();
        return feet <= 0 ? 0 : (int) Math.max(1, Math.ceil((feet - lap) / (length - lap) - NOISE));
    }
}
