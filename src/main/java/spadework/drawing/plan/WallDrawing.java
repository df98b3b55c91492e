// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.place.OutlineSpot;

/** The outline of the house and its dug walls, each with its length outside the figure. */
public final class WallDrawing {
    private static final double END_MARK = 5;

    private WallDrawing() {}

    static void draw(Job job, AddedParts extra, PlanFrame frame, PlanBands bands, DrawingSheet sheet) {
        Rect house = frame.house();
        sheet.draw(new Box(house.left(), house.top(), house.width(), house.height(), Weight.MEDIUM, Role.HOUSE));
        for (Wall wall : job.walls()) {
            sheet.line(
                    frame.at(OutlineSpot.startOf(wall), 0),
                    frame.at(OutlineSpot.endOf(wall), 0),
                    Weight.THICK,
                    extra.wall(wall.label()),
                    false);
            // A mark across each end tells one wall from the next.
            for (OutlineSpot end : List.of(OutlineSpot.startOf(wall), OutlineSpot.endOf(wall))) {
                sheet.line(frame.at(end, -END_MARK), frame.at(end, END_MARK), Weight.THIN, Role.WALL, false);
            }
        }
        job.walls()
                .forEach(wall ->
                        sheet.wish(length(wall, frame, bands.on(wall.faces()).words())));
    }

    private static LabelRequest length(Wall wall, PlanFrame frame, double out) {
        String text = wall.length().text();
        double half = OutlineSpot.isAcross(wall.faces())
                ? LabelRequest.SMALL / 2
                : LabelText.width(text, LabelRequest.SMALL) / 2;
        Rect zone = along(wall, frame, frame.outside(wall.faces(), out - 2), 10);
        Point target = frame.at(middle(wall), out + 2 + half);
        return LabelRequest.small(
                        text, PlanFrame.WIDEST_WORDS, Role.DIMENSION, new LabelSpot(target, zone, 100), keyText(wall))
                .leaningToward(wall.faces());
    }

    static String keyText(Wall wall) {
        return wall.label() + ": " + wall.length().text();
    }

    static OutlineSpot middle(Wall wall) {
        return new OutlineSpot(wall.faces(), wall.from().feet() + wall.length().feet() / 2);
    }

    /** The part of a rectangle that lies before or behind the wall, a little wider than the wall is long. */
    static Rect along(Wall wall, PlanFrame frame, Rect rect, double more) {
        Point start = frame.at(OutlineSpot.startOf(wall), 0);
        Point end = frame.at(OutlineSpot.endOf(wall), 0);
        return OutlineSpot.isAcross(wall.faces())
                ? new Rect(
                        Math.max(rect.left(), start.x() - more),
                        rect.top(),
                        Math.min(rect.right(), end.x() + more),
                        rect.bottom())
                : new Rect(
                        rect.left(),
                        Math.max(rect.top(), start.y() - more),
                        rect.right(),
                        Math.min(rect.bottom(), end.y() + more));
    }
}
