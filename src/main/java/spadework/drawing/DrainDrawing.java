package spadework.drawing;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.Shape.Dot;
import spadework.drawing.Shape.Role;
import spadework.drawing.Shape.Weight;

/** The perforated drains beside the walls, with arrows toward the tee and a point at it. */
final class DrainDrawing {
    private static final double WIDEST = 90;

    private DrainDrawing() {}

    static void draw(Waterways water, Extra extra, Frame frame, Bands bands, Sheet sheet) {
        for (DrainRoute route : water.drains()) {
            Role role = extra.pipe(route.drain().label(), Role.DRAIN);
            for (List<Spot> arm : route.arms()) {
                sheet.pipe(points(arm, frame), Weight.MEDIUM, role, true);
            }
            for (Spot spot : route.cleanouts()) {
                sheet.draw(cleanout(frame.at(spot, Bands.DRAIN)));
            }
            Point tee = frame.at(route.tee(), Bands.DRAIN);
            sheet.draw(new Dot(tee.x(), tee.y(), 2, Weight.THIN, Role.MAIN, true));
            sheet.wish(name(route, frame, bands));
        }
    }

    static Dot cleanout(Point at) {
        return new Dot(at.x(), at.y(), 2.6, Weight.MEDIUM, Role.WATER, false);
    }

    private static List<Point> points(List<Spot> arm, Frame frame) {
        List<Point> points = new ArrayList<>();
        for (int i = 1; i < arm.size(); i++) {
            points.addAll(RoundTheHouse.way(frame, arm.get(i - 1), arm.get(i), Bands.DRAIN));
        }
        return points;
    }

    /** The drain's name stands near its far end, away from the pipes that leave at the tee. */
    private static Wish name(DrainRoute route, Frame frame, Bands bands) {
        List<Spot> arm = route.arms().get(0);
        Spot from = arm.get(0);
        Spot at = new Spot(from.side(), from.feet() + (arm.get(1).feet() - from.feet()) * 0.2);
        String label = route.drain().label();
        double width = Math.min(WIDEST, LabelText.width(label, Wish.SMALL));
        double half = Spot.isAcross(at.side()) ? Wish.SMALL / 2 : width / 2;
        double words = bands.on(at.side()).words();
        Rect zone = frame.outside(at.side(), Bands.DRAIN);
        String inKey = label + PlanWords.TO + route.drain().into();
        return Wish.small(label, WIDEST, Role.DRAIN, frame.at(at, words + 2 + half), zone, 50, inKey)
                .leaningToward(at.side());
    }
}
