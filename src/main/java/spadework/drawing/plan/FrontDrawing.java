// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape.Area;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Side;
import spadework.place.OutlineSpot;
import spadework.place.PlaceWords;

/** The street side in words at the edge of the sheet; the front door as a small arrow head where it was measured. */
public final class FrontDrawing {
    private static final double DOOR_HALF = 4.5;
    private static final double DOOR_DEEP = 7;

    private FrontDrawing() {}

    /** Room for the words at the edge of the sheet on the street side, points. */
    static double room(Side side, PlanWords words) {
        return OutlineSpot.isAcross(side) ? 14 : LabelText.width(words.street(), LabelRequest.SMALL) + 8;
    }

    static void draw(Job job, PlanFrame frame, PlanWords words, DrawingSheet sheet) {
        Optional<Side> front = PlaceWords.front(job);
        if (front.isEmpty()) {
            return;
        }
        street(front.get(), frame, words.street(), sheet);
        House house = job.site().house();
        house.door()
                .filter(door -> house.front().isPresent())
                .ifPresent(door -> door(new OutlineSpot(front.get(), door.feet()), frame, words.door(), sheet));
    }

    private static void street(Side side, PlanFrame frame, String text, DrawingSheet sheet) {
        Rect edge = frame.sheet().grown(-3);
        double half = LabelText.width(text, LabelRequest.SMALL) / 2;
        Point middle = frame.at(new OutlineSpot(side, OutlineSpot.sideFeet(frame.size(), side) / 2), 0);
        Point target = switch (side) {
            case NORTH -> new Point(middle.x(), edge.top() + 5);
            case SOUTH -> new Point(middle.x(), edge.bottom() - 5);
            case EAST -> new Point(edge.right() - half, middle.y());
            case WEST -> new Point(edge.left() + half, middle.y());
        };
        Rect zone = frame.outside(side, PlanBands.DRAIN);
        sheet.wish(
                LabelRequest.small(text, PlanFrame.WIDEST_WORDS, Role.LIMIT, new LabelSpot(target, zone, 160), text));
    }

    /** A head that points into the house; its name stands inside. */
    private static void door(OutlineSpot spot, PlanFrame frame, String text, DrawingSheet sheet) {
        Point at = frame.at(spot, 0);
        boolean across = OutlineSpot.isAcross(spot.side());
        Point tip = frame.at(spot, -DOOR_DEEP);
        Point one = across ? at.plus(-DOOR_HALF, 0) : at.plus(0, -DOOR_HALF);
        Point other = across ? at.plus(DOOR_HALF, 0) : at.plus(0, DOOR_HALF);
        sheet.draw(new Area(List.of(one, tip, other), Weight.THIN, Role.HOUSE));
        double half = across ? 6 : LabelText.width(text, LabelRequest.SMALL) / 2 + 3;
        Point target = frame.at(spot, -DOOR_DEEP - half);
        LabelRequest name = LabelRequest.small(
                text,
                PlanFrame.WIDEST_WORDS,
                Role.LIMIT,
                new LabelSpot(target, frame.house().grown(-3), 40),
                text);
        sheet.wish(List.of(name, name.withLeader(tip, frame.house().grown(-3), 110)));
    }
}
