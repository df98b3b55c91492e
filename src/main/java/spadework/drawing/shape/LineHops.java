// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.List;

/** A line that runs over others without being joined to them: at each of them it makes a small hop. */
public final class LineHops {
    /** Half the width of a hop and its height, points. */
    public static final double RADIUS = 2.2;

    /** What still can be seen as a hop, points. */
    private static final double LEAST = 0.8;

    private static final double TOUCH = 0.01;

    /** Straight pieces of half a hop. */
    private static final int PIECES = 3;

    private LineHops() {}

    /** The points of the path with a hop wherever one of the others runs across it or ends on it. */
    public static List<Point> over(List<Point> path, List<List<Point>> others) {
        List<Point> points = new ArrayList<>(path.subList(0, Math.min(1, path.size())));
        for (int i = 1; i < path.size(); i++) {
            Point a = path.get(i - 1);
            Point b = path.get(i);
            List<Double> met = met(a, b, others);
            for (int first = 0; first < met.size(); ) {
                int last = first;
                // Hops that would run into one another are one wide hop.
                while (last + 1 < met.size() && met.get(last + 1) - met.get(last) < 2 * RADIUS) {
                    last++;
                }
                hop(a, b, met.get(first), met.get(last), points);
                first = last + 1;
            }
            points.add(b);
        }
        return points;
    }

    /** How far from a others meet the line from a to b, nearest first; its ends are no places to hop. */
    private static List<Double> met(Point a, Point b, List<List<Point>> others) {
        double length = a.distanceTo(b);
        List<Double> met = new ArrayList<>();
        for (List<Point> other : others) {
            for (int i = 1; i < other.size(); i++) {
                double at = length * share(a, b, other.get(i - 1), other.get(i));
                if (at >= LEAST && at <= length - LEAST) {
                    met.add(at);
                }
            }
        }
        met.sort(Double::compare);
        return met;
    }

    /** The share of the line from a to b at which it meets the line from c to d; not a number where it does not. */
    private static double share(Point a, Point b, Point c, Point d) {
        double x = b.x() - a.x();
        double y = b.y() - a.y();
        double across = x * (d.y() - c.y()) - y * (d.x() - c.x());
        double reach = a.distanceTo(b) * c.distanceTo(d);
        if (Math.abs(across) <= TOUCH * reach) {
            return Double.NaN;
        }
        double here = ((c.x() - a.x()) * (d.y() - c.y()) - (c.y() - a.y()) * (d.x() - c.x())) / across;
        double there = ((c.x() - a.x()) * y - (c.y() - a.y()) * x) / across;
        double slack = TOUCH / c.distanceTo(d);
        return there >= -slack && there <= 1 + slack ? here : Double.NaN;
    }

    /** Up, or to the right where the line is upright. */
    private static void hop(Point a, Point b, double first, double last, List<Point> points) {
        double length = a.distanceTo(b);
        double x = (b.x() - a.x()) / length;
        double y = (b.y() - a.y()) / length;
        double side = x > TOUCH || (Math.abs(x) <= TOUCH && y > 0) ? 1 : -1;
        double radius = Math.min(RADIUS, Math.min(first, length - last));
        for (int i = 0; i <= 2 * PIECES; i++) {
            double angle = Math.PI * i / (2 * PIECES);
            double along = -radius * Math.cos(angle);
            double up = side * radius * Math.sin(angle);
            double from = i <= PIECES ? first : last;
            points.add(a.plus(x * (from + along) + y * up, y * (from + along) - x * up));
            if (i == PIECES && last > first) {
                points.add(a.plus(x * (last + along) + y * up, y * (last + along) - x * up));
            }
        }
    }
}
