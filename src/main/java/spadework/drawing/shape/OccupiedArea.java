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
    static final double CLEAR = 2;

    private static final double ARROW_HALF_WIDTH = 3;

    private OccupiedArea() {}

    /** True if words in that box would touch none of the shapes. */
    public static boolean leaves(Rect box, List<Shape> shapes) {
        return shapes.stream().noneMatch(shape -> touches(shape, box.grown(CLEAR)));
    }

    /** True if a line between the two points would run through none of the labels. */
    static boolean leavesLine(Point a, Point b, List<Shape> shapes) {
        return new Obstacles(new Rect(a.x(), a.y(), a.x(), a.y()), shapes).leaveLine(a, b);
    }

    /** An upright rectangle that holds all places at which a shape can be touched. */
    static Rect bounds(Shape shape) {
        if (shape instanceof Line line) {
            return new Rect(
                            Math.min(line.x1(), line.x2()),
                            Math.min(line.y1(), line.y2()),
                            Math.max(line.x1(), line.x2()),
                            Math.max(line.y1(), line.y2()))
                    .grown(ARROW_HALF_WIDTH);
        }
        if (shape instanceof Dot dot) {
            return Rect.around(new Point(dot.x(), dot.y()), 0, 0).grown(dot.radius() + 0.5);
        }
        if (shape instanceof Box drawn) {
            return new Rect(drawn.x(), drawn.y(), drawn.x() + drawn.width(), drawn.y() + drawn.height()).grown(0.5);
        }
        if (shape instanceof Area area) {
            return new Rect(
                            area.corners().stream().mapToDouble(Point::x).min().orElse(0),
                            area.corners().stream().mapToDouble(Point::y).min().orElse(0),
                            area.corners().stream().mapToDouble(Point::x).max().orElse(0),
                            area.corners().stream().mapToDouble(Point::y).max().orElse(0))
                    .grown(0.5);
        }
        return LabelText.box((Label) shape);
    }

    /** Whether a box reaches a shape. */
    static boolean touches(Shape shape, Rect box) {
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
