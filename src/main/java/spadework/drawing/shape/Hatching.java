// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.List;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** Light slanted lines that fill a convex outline, and short ticks behind the edge of ground that is left alone. */
public final class Hatching {
    private static final double APART = 9;
    private static final double TICK = 4;
    private static final double TICKS_APART = 18;

    private Hatching() {}

    /** Lines from lower left to upper right; corners in order, either way round. */
    public static void fill(List<Point> corners, DrawingSheet sheet) {
        double low = corners.stream().mapToDouble(c -> c.x() + c.y()).min().orElse(0);
        double high = corners.stream().mapToDouble(c -> c.x() + c.y()).max().orElse(0);
        for (double sum = low + APART; sum < high; sum += APART) {
            double[] across = cut(corners, sum);
            if (across[1] - across[0] > 1) {
                sheet.line(
                        new Point(across[0], sum - across[0]),
                        new Point(across[1], sum - across[1]),
                        Weight.THIN,
                        Role.SOIL,
                        false);
            }
        }
    }

    /** From which x to which x the line x + y = sum lies inside; an empty span when it misses. */
    private static double[] cut(List<Point> corners, double sum) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double before = a.x() + a.y() - sum;
            double after = b.x() + b.y() - sum;
            if (before * after <= 0 && before != after) {
                double x = a.x() + (b.x() - a.x()) * before / (before - after);
                from = Math.min(from, x);
                to = Math.max(to, x);
            }
        }
        return new double[] {from, to};
    }

    /** Three ticks every so often on the right-hand side of the way from a to b, pointing down and left. */
    public static void ticks(Point a, Point b, double dx, double dy, DrawingSheet sheet) {
        double length = a.distanceTo(b);
        for (double along = 6; along < length - 8; along += TICKS_APART) {
            for (int i = 0; i < 3; i++) {
                double at = along + i * 3;
                if (at < length) {
                    Point from = a.toward(b, at / length);
                    sheet.line(from, from.plus(dx * TICK, dy * TICK), Weight.THIN, Role.SOIL, false);
                }
            }
        }
    }
}
