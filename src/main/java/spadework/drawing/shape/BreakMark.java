// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.List;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/**
 * Two strokes across a line that is not drawn to scale: only the figure beside it holds.
 *
 * @param before where the line stops
 * @param after where it goes on
 * @param strokes across it, one at each of the two
 */
public record BreakMark(Point before, Point after, List<Line> strokes) {
    /** A drawn length that is off by no more than that share of itself is to scale, as far as anybody can see. */
    private static final double TO_SCALE = 0.02;

    private static final double HALF_GAP = 1.75;
    private static final double HALF_STROKE = 4;
    private static final double SLANT = 1.5;

    public BreakMark {
        strokes = List.copyOf(strokes);
    }

    /** In the middle of a line between two points that lie apart. */
    public static BreakMark between(Point a, Point b) {
        double length = a.distanceTo(b);
        double x = (b.x() - a.x()) / length;
        double y = (b.y() - a.y()) / length;
        Point middle = a.toward(b, 0.5);
        Point before = middle.plus(-x * HALF_GAP, -y * HALF_GAP);
        Point after = middle.plus(x * HALF_GAP, y * HALF_GAP);
        return new BreakMark(before, after, List.of(stroke(before, x, y), stroke(after, x, y)));
    }

    /** Whether something that was measured is drawn as long as that, both in points. */
    public static boolean isToScale(double drawn, double measured) {
        return Math.abs(drawn - measured) <= TO_SCALE * measured;
    }

    private static Line stroke(Point at, double x, double y) {
        Point one = at.plus(-y * HALF_STROKE + x * SLANT, x * HALF_STROKE + y * SLANT);
        Point other = at.plus(y * HALF_STROKE - x * SLANT, -x * HALF_STROKE - y * SLANT);
        return new Line(one.x(), one.y(), other.x(), other.y(), Weight.MEDIUM, Role.BREAK, false);
    }

    public void draw(DrawingSheet sheet) {
        strokes.forEach(sheet::draw);
    }
}
