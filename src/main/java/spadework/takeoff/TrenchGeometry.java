package spadework.takeoff;

/**
 * Volumes of the trench beside a wall, in cubic feet. All lengths in feet; {@code slope} is horizontal for each
 * vertical of the outer bank, from the bottom of the trench up.
 */
final class TrenchGeometry {
    private TrenchGeometry() {}

    /**
     * Cross-section of the trench where the footing's top lies {@code depth} below grade: the strip over the footing's
     * projection, the bottom width beside the footing, and the sloped bank.
     */
    static double section(double depth, double footing, double projection, double width, double slope) {
        double full = depth + footing;
        return projection * depth + width * full + slope * full * full / 2;
    }

    /** Prismoidal rule; exact where the section is at most a cubic in the distance, as here for a straight grade. */
    static double prismoid(double length, double start, double middle, double end) {
        return length / 6 * (start + 4 * middle + end);
    }

    /**
     * The square left between two trenches at an outside corner, which is also what two trenches share at an inside
     * corner, from the trench bottom up to {@code height}. Both walls may have their own width, slope and projection.
     *
     * <p>At a height h the trench reaches p + B + s·h from the wall's face. Below the footing's top the corner of the
     * footing, p1 × p2, stands in that rectangle and is not dug.
     */
    static double corner(double height, double footing, CornerSide first, CornerSide second) {
        double a1 = first.projection() + first.width();
        double a2 = second.projection() + second.width();
        double whole = a1 * a2 * height
                + (a1 * second.slope() + a2 * first.slope()) * height * height / 2
                + first.slope() * second.slope() * height * height * height / 3;
        return whole - first.projection() * second.projection() * Math.min(footing, height);
    }

    /** What one wall brings to a corner; feet, and run for each rise. */
    record CornerSide(double projection, double width, double slope) {}
}
