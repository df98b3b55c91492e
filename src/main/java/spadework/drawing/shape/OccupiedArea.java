// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.List;
import spadework.drawing.shape.Shape.Area;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;

/** Where something is drawn already. */
public final class OccupiedArea {
    /** White space kept around words, points. */
    private static final double CLEAR = 2;

    private static final double ARROW_HALF_WIDTH = 3;

    private OccupiedArea() {}

    /** True if words in that box would touch none of the shapes. */
    public static boolean leaves(Rect box, List<Shape> shapes) {
        return shapes.stream().noneMatch(shape -> touches(shape, box.grown(CLEAR)));
    }

    /** True if a line between the two points would run through none of the labels and symbols. */
    static boolean leavesLine(Point a, Point b, List<Shape> shapes) {
        for (Shape shape : shapes) {
            if (shape instanceof Label label
                    && LabelText.box(label).grown(CLEAR).isCrossedBy(a, b)) {
                return false;
            }
        }
        return true;
    }

    private static boolean touches(Shape shape, Rect box) {
        if (shape instanceof Line line) {
            Point a = new Point(line.x1(), line.y1());
            Point b = new Point(line.x2(), line.y2());
            double half = line.weight() == Shape.Weight.THICK ? 2 : 0.5;
            return box.grown(half).isCrossedBy(a, b)
                    || (line.arrow() && box.grown(ARROW_HALF_WIDTH).isCrossedBy(b, b));
        }
        if (shape instanceof Dot dot) {
            Point center = new Point(dot.x(), dot.y());
            return box.nearestTo(center).distanceTo(center) < dot.radius() + 0.5;
        }
        if (shape instanceof Box drawn) {
            Rect rect = new Rect(drawn.x(), drawn.y(), drawn.x() + drawn.width(), drawn.y() + drawn.height());
            return box.overlaps(rect.grown(0.5)) && !box.isInside(rect);
        }
        if (shape instanceof Area area) {
            return isOnEdge(area, box.grown(0.5));
        }
        return shape instanceof Label label && LabelText.box(label).overlaps(box);
    }

    private static boolean isOnEdge(Area area, Rect box) {
        List<Point> corners = area.corners();
        for (int i = 0; i < corners.size(); i++) {
            if (box.isCrossedBy(corners.get(i), corners.get((i + 1) % corners.size()))) {
                return true;
            }
        }
        return false;
    }
}
