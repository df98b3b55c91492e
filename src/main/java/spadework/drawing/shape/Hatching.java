// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** Light slanted lines that fill an outline, and short ticks behind the edge of ground that is left alone. */
public final class Hatching {
    private static final double APART = 9;
    private static final double CLOSE = 6;
    private static final double TICK = 4;

    /** White around words and trees, points: as much as between two lines. */
    private static final double CLEAR = 4.5;

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

    /**
     * Lines from lower left to upper right within outlines of any form, holes among them, that leave words and trees
     * clear.
     *
     * @param edges of the outlines, closed
     * @param drawn what is drawn already
     */
    public static List<Line> within(List<Line> edges, Role role, List<Shape> drawn) {
        List<Rect> kept =
                drawn.stream().flatMap(shape -> keptClear(shape).stream()).toList();
        double low = edges.stream().mapToDouble(Hatching::least).min().orElse(0);
        double high = edges.stream().mapToDouble(Hatching::most).max().orElse(0);
        List<Line> lines = new ArrayList<>();
        for (double sum = Math.ceil(low / CLOSE) * CLOSE + CLOSE / 2; sum < high; sum += CLOSE) {
            List<Double> cuts = crossings(edges, sum);
            for (int i = 1; i < cuts.size(); i += 2) {
                clear(cuts.get(i - 1), cuts.get(i), sum, role, kept, lines);
            }
        }
        return lines;
    }

    private static Optional<Rect> keptClear(Shape shape) {
        if (shape instanceof Label label) {
            return Optional.of(LabelText.box(label).grown(CLEAR));
        }
        boolean tree = shape instanceof Dot dot && dot.role() == Role.LIMIT && !dot.filled();
        return tree ? Optional.of(OccupiedArea.bounds(shape)) : Optional.empty();
    }

    private static double least(Line edge) {
        return Math.min(edge.x1() + edge.y1(), edge.x2() + edge.y2());
    }

    private static double most(Line edge) {
        return Math.max(edge.x1() + edge.y1(), edge.x2() + edge.y2());
    }

    /** Where the line x + y = sum crosses edges, from left to right. */
    private static List<Double> crossings(List<Line> edges, double sum) {
        List<Double> cuts = new ArrayList<>();
        for (Line edge : edges) {
            double before = edge.x1() + edge.y1() - sum;
            double after = edge.x2() + edge.y2() - sum;
            if (before < 0 != after < 0) {
                cuts.add(edge.x1() + (edge.x2() - edge.x1()) * before / (before - after));
            }
        }
        cuts.sort(Double::compare);
        return cuts;
    }

    /** The parts between two places of a line x + y = sum that leave all boxes clear. */
    private static void clear(double from, double to, double sum, Role role, List<Rect> kept, List<Line> lines) {
        double at = from;
        List<double[]> taken = new ArrayList<>();
        for (Rect box : kept) {
            double left = Math.max(box.left(), sum - box.bottom());
            double right = Math.min(box.right(), sum - box.top());
            if (left < right) {
                taken.add(new double[] {left, right});
            }
        }
        taken.sort(Comparator.comparingDouble(span -> span[0]));
        taken.add(new double[] {to, to});
        for (double[] span : taken) {
            double end = Math.min(span[0], to);
            if (end - at > 1) {
                lines.add(new Line(at, sum - at, end, sum - end, Weight.THIN, role, false));
            }
            at = Math.max(at, span[1]);
        }
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
