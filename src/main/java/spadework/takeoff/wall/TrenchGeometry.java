// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

/**
 * Volumes of the trench beside a wall, in cubic feet. All lengths in feet and not negative; {@code slope} is
 * horizontal for each vertical of the outer bank, from the bottom of the trench up, 0 for an upright bank.
 */
public final class TrenchGeometry {
    private TrenchGeometry() {}

    /**
     * Cross-section of the trench where the footing's top lies {@code depth} below grade, square feet: the strip over
     * the footing's projection, the bottom width beside the footing, and the sloped bank. Area of a trapezoid.
     *
     * @param depth grade to the footing's top
     * @param footing thickness of the footing; 0 where the trench ends at {@code depth}
     * @param projection of the footing beyond the wall's face
     * @param width of the trench's bottom, beside the footing
     */
    public static double section(double depth, double footing, double projection, double width, double slope) {
        double full = depth + footing;
        return projection * depth + width * full + slope * full * full / 2;
    }

    /**
     * Prismoidal rule, cubic feet; exact where the section is at most a cubic in the distance, as here for a straight
     * grade.
     *
     * @param length along the trench
     * @param start section at the start, square feet; so are {@code middle} and {@code end}
     */
    public static double prismoid(double length, double start, double middle, double end) {
        return length / 6 * (start + 4 * middle + end);
    }

    /**
     * The square left between two trenches at an outside corner, which is also what two trenches share at an inside
     * corner, from the trench bottom up to {@code height}, cubic feet. Both walls may have their own width, slope and
     * projection.
     *
     * <p>At a height h the trench reaches p + B + s·h from the wall's face. Below the footing's top the corner of the
     * footing, p1 × p2, stands in that rectangle and is not dug. Integral of that rectangle over the height.
     *
     * @param height above the trench's bottom
     * @param footing thickness of the footing
     */
    public static double corner(double height, double footing, CornerSide first, CornerSide second) {
        double a1 = first.projection() + first.width();
        double a2 = second.projection() + second.width();
        double whole = a1 * a2 * height
                + (a1 * second.slope() + a2 * first.slope()) * height * height / 2
                + first.slope() * second.slope() * height * height * height / 3;
        return whole - first.projection() * second.projection() * Math.min(footing, height);
    }

    /** What one wall brings to a corner; feet, and run for each rise. */
    public record CornerSide(double projection, double width, double slope) {}
}
