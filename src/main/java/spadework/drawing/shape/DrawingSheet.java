// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** What has been drawn so far and which words still want a place. */
public final class DrawingSheet {
    private static final double LONG_ENOUGH_FOR_AN_ARROW = 40;

    private final List<Shape> shapes = new ArrayList<>();
    private final List<List<LabelRequest>> wishes = new ArrayList<>();

    public void draw(Shape shape) {
        shapes.add(shape);
    }

    /** Draws under all that is drawn already. */
    public void under(List<? extends Shape> below) {
        shapes.addAll(0, below);
    }

    public void wish(LabelRequest wish) {
        wish(List.of(wish));
    }

    /** Several ways to name one thing, the best first. */
    public void wish(List<LabelRequest> oneOf) {
        wishes.add(List.copyOf(oneOf));
    }

    public List<Shape> shapes() {
        return shapes;
    }

    public List<List<LabelRequest>> wishes() {
        return wishes;
    }

    public void line(Point a, Point b, Weight weight, Role role, boolean arrow) {
        shapes.add(new Line(a.x(), a.y(), b.x(), b.y(), weight, role, arrow));
    }

    /** A pipe through the points; an arrow in the middle of each long reach shows the flow. */
    public void pipe(List<Point> points, Weight weight, Role role, boolean arrowAtEnd) {
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            boolean ends = arrowAtEnd && i == points.size() - 1;
            if (a.distanceTo(b) < 0.01) {
                continue;
            }
            if (a.distanceTo(b) > LONG_ENOUGH_FOR_AN_ARROW && !ends) {
                Point middle = a.toward(b, 0.5);
                line(a, middle, weight, role, true);
                line(middle, b, weight, role, false);
            } else {
                line(a, b, weight, role, ends);
            }
        }
    }
}
