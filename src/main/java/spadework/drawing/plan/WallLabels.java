// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.LabelPlacer;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.place.OutlineSpot;

/**
 * The walls' own labels, in bold inside the house, each behind its wall. If they do not all fit, every wall gets a
 * number in brackets instead and the key says which is which: some of both would be read wrongly.
 */
public final class WallLabels {
    private static final double WIDEST = 96;

    private WallLabels() {}

    /** For every wall the ways to name it, the best first, on a sheet on which everything else is drawn. */
    static List<List<LabelRequest>> of(Job job, PlanFrame frame, List<Shape> drawn) {
        List<List<LabelRequest>> labels = new ArrayList<>();
        List<List<LabelRequest>> numbers = new ArrayList<>();
        for (Wall wall : job.walls()) {
            String inKey = WallDrawing.keyText(wall);
            labels.add(freer(name(wall, wall.label(), LabelRequest.LARGE, inKey, false, frame), wall, frame));
            String mark = "(" + labels.size() + ")";
            List<LabelRequest> number = new ArrayList<>();
            for (double size : new double[] {LabelRequest.LARGE, LabelRequest.SMALL}) {
                number.addAll(freer(name(wall, mark, size, mark + " " + inKey, true, frame), wall, frame));
            }
            LabelRequest last = number.get(number.size() - 1);
            Rect outside = frame.outside(wall.faces(), PlanBands.DRAIN);
            number.add(last.withLeader(frame.at(WallDrawing.middle(wall), 4), outside, 110));
            numbers.add(number);
        }
        return allFit(labels, drawn) ? labels : numbers;
    }

    private static boolean allFit(List<List<LabelRequest>> names, List<Shape> drawn) {
        List<Shape> tried = new ArrayList<>(drawn);
        for (List<LabelRequest> oneOf : names) {
            List<Shape> placed = oneOf.stream()
                    .filter(wish -> wish.width() <= WIDEST)
                    .map(wish -> LabelPlacer.place(wish, tried))
                    .filter(shapes -> !shapes.isEmpty())
                    .findFirst()
                    .orElse(List.of());
            if (placed.isEmpty()) {
                return false;
            }
            tried.addAll(placed);
        }
        return true;
    }

    private static LabelRequest name(
            Wall wall, String text, double size, String inKey, boolean explained, PlanFrame frame) {
        double half = OutlineSpot.isAcross(wall.faces()) ? size / 2 : LabelText.width(text, size) / 2;
        Point target = frame.at(WallDrawing.middle(wall), -half - 6);
        Rect zone = WallDrawing.along(wall, frame, frame.house().grown(-3), 6);
        return new LabelRequest(
                text,
                size,
                true,
                Role.WALL,
                "middle",
                new LabelSpot(target, zone, 40),
                Optional.empty(),
                inKey,
                explained);
    }

    /** The name behind its wall, or else anywhere in the house with a line to its wall. */
    private static List<LabelRequest> freer(LabelRequest name, Wall wall, PlanFrame frame) {
        Point wallInside = frame.at(WallDrawing.middle(wall), -4);
        return List.of(name, name.withLeader(wallInside, frame.house().grown(-3), 110));
    }
}
