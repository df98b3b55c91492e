// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.place.DrainRoute;
import spadework.place.OutlineSpot;

/** The perforated drains beside the walls, with arrows toward the tee and a point at it. */
public final class DrainDrawing {
    private static final double WIDEST = 90;

    /** From the end of a drain, with its cleanout, to its name, points. */
    private static final double END = 6;

    private DrainDrawing() {}

    static void draw(
            PipeLayout water, AddedParts extra, PlanFrame frame, PlanBands bands, PlanWords words, DrawingSheet sheet) {
        double out = bands.drain(frame.scale());
        for (DrainRoute route : water.drains()) {
            Role role = extra.pipe(route.drain().label(), Role.DRAIN);
            ways(route, frame, out).forEach(way -> sheet.pipe(way, Weight.MEDIUM, role, true));
            for (OutlineSpot spot : route.cleanouts()) {
                sheet.draw(cleanout(frame.at(spot, out)));
            }
            RunDrawing.joint(frame.at(route.tee(), out), sheet);
            sheet.wish(name(route, frame, bands, words));
        }
    }

    static Dot cleanout(Point at) {
        return new Dot(at.x(), at.y(), 2.6, Weight.MEDIUM, Role.WATER, false);
    }

    /** The lines of a drain's arms, that many points outside the house. */
    static List<List<Point>> ways(DrainRoute route, PlanFrame frame, double out) {
        return route.arms().stream().map(arm -> points(arm, frame, out)).toList();
    }

    private static List<Point> points(List<OutlineSpot> arm, PlanFrame frame, double out) {
        List<Point> points = new ArrayList<>();
        for (int i = 1; i < arm.size(); i++) {
            points.addAll(OutlinePath.way(frame, arm.get(i - 1), arm.get(i), out));
        }
        return points;
    }

    /** The drain's name stands at its far end, beyond the last of it where there is room, away from the tee. */
    private static LabelRequest name(DrainRoute route, PlanFrame frame, PlanBands bands, PlanWords words) {
        List<OutlineSpot> arm = route.arms().get(0);
        OutlineSpot from = arm.get(0);
        String label = route.drain().label();
        double width = Math.min(WIDEST, LabelText.width(label, LabelRequest.SMALL));
        String inKey = words.leads(label, route.drain().into());
        boolean pipes = bands.on(from.side()).words() > PlanBands.DRAIN + 4.5;
        return LabelRequest.small(
                        label,
                        WIDEST,
                        Role.DRAIN,
                        pipes ? beyond(from, arm.get(1), width, frame) : beside(from, arm.get(1), width, frame, bands),
                        inKey)
                .leaningToward(from.side());
    }

    /** Where other pipes run between it and the words of its side, these stand beyond its end. */
    private static LabelSpot beyond(OutlineSpot from, OutlineSpot next, double width, PlanFrame frame) {
        Point end = frame.at(from, PlanBands.DRAIN);
        Point along = frame.at(next, PlanBands.DRAIN);
        double gap = END + (OutlineSpot.isAcross(from.side()) ? width : LabelRequest.SMALL) / 2;
        Point at = end.plus(
                Math.signum(end.x() - along.x()) * (end.x() == along.x() ? 0 : gap),
                Math.signum(end.y() - along.y()) * (end.y() == along.y() ? 0 : gap));
        return new LabelSpot(at, frame.outside(from.side(), 0), 50);
    }

    private static LabelSpot beside(
            OutlineSpot from, OutlineSpot next, double width, PlanFrame frame, PlanBands bands) {
        OutlineSpot at = new OutlineSpot(from.side(), from.feet() + (next.feet() - from.feet()) * 0.2);
        double half = OutlineSpot.isAcross(at.side()) ? LabelRequest.SMALL / 2 : width / 2;
        double words = bands.on(at.side()).words();
        return new LabelSpot(frame.at(at, words + 2 + half), frame.outside(at.side(), PlanBands.DRAIN), 50);
    }
}
