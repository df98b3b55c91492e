// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;

/** Finds for words the free place that is nearest to where they would lie best. */
public final class LabelPlacer {
    private static final double STEP = 2.5;
    private static final int STEPS = 48;

    /** Every place around a target, nearest first. */
    private static final List<Point> AROUND = around();

    private LabelPlacer() {}

    /** The words where nothing else is, with their leader if they have one; empty if there is no such place. */
    public static List<Shape> place(LabelRequest wish, List<Shape> drawn) {
        double reach = wish.reach();
        Rect field = Rect.around(wish.target(), wish.width() + 2 * reach, wish.size() + 2 * reach);
        Obstacles obstacles = new Obstacles(field.within(wish.zone()), drawn);
        for (Point step : AROUND) {
            if (step.x() * step.x() + step.y() * step.y() > reach * reach) {
                return List.of();
            }
            Rect box = Rect.around(wish.target().plus(step.x(), step.y()), wish.width(), wish.size());
            if (box.isInside(wish.zone()) && obstacles.leave(box)) {
                Optional<Line> leader = wish.leader().map(from -> leader(from, box));
                if (leader.isEmpty() || isClear(leader.get(), obstacles)) {
                    List<Shape> shapes = new ArrayList<>();
                    leader.ifPresent(shapes::add);
                    shapes.add(words(wish, box));
                    return shapes;
                }
            }
        }
        return List.of();
    }

    private static Label words(LabelRequest wish, Rect box) {
        double x = switch (wish.anchor()) {
            case "start" -> box.left();
            case "end" -> box.right();
            default -> box.center().x();
        };
        double y = LabelText.baseline(box);
        return new Label(x, y, wish.text(), wish.anchor(), wish.size(), wish.bold(), wish.role());
    }

    /** A line that ends a little short of the words. */
    private static Line leader(Point from, Rect box) {
        Point to = box.grown(2.5).nearestTo(from);
        return new Line(from.x(), from.y(), to.x(), to.y(), Shape.Weight.THIN, Shape.Role.DIMENSION, false);
    }

    private static boolean isClear(Line line, Obstacles obstacles) {
        return obstacles.leaveLine(new Point(line.x1(), line.y1()), new Point(line.x2(), line.y2()));
    }

    private static List<Point> around() {
        List<Point> steps = new ArrayList<>();
        for (int row = -STEPS; row <= STEPS; row++) {
            for (int column = -STEPS; column <= STEPS; column++) {
                steps.add(new Point(column * STEP, row * STEP));
            }
        }
        steps.sort(Comparator.comparingDouble(step -> step.x() * step.x() + step.y() * step.y()));
        return List.copyOf(steps);
    }
}
