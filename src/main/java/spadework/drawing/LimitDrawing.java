package spadework.drawing;

import java.util.List;
import spadework.drawing.Shape.Dot;
import spadework.drawing.Shape.Role;
import spadework.drawing.Shape.Weight;
import spadework.job.LimitKind;
import spadework.job.Side;

/** Trees and long-dash lines before the walls, each with its distance in words. */
final class LimitDrawing {
    private static final double TREE_RADIUS = 7;
    private static final double[] SHARES = {0.25, 0.75, 0.5, 0.12, 0.88, 0.38, 0.62, 0, 1};

    private LimitDrawing() {}

    static void draw(Surroundings around, Frame frame, Bands bands, Sheet sheet) {
        for (Side side : Side.values()) {
            Bands.Band band = bands.on(side);
            lines(around.lines(side, false), band.near(), frame, sheet);
            lines(around.lines(side, true), band.far(), frame, sheet);
            around.trees(side).forEach(tree -> tree(tree, band.trees(), frame, sheet));
        }
    }

    private static void lines(List<Limit> limits, double first, Frame frame, Sheet sheet) {
        double out = first;
        boolean below = true;
        for (Limit limit : limits) {
            boolean whole = isOnlyLotLine(limit, limits);
            double feet = whole ? Spot.sideFeet(frame.size(), limit.side()) : 0;
            Point a = frame.at(new Spot(limit.side(), whole ? 0 : limit.fromFeet()), out);
            Point b = frame.at(new Spot(limit.side(), whole ? feet : limit.toFeet()), out);
            sheet.line(a, b, Weight.THIN, Role.LIMIT, false);
            double half = LabelText.width(limit.text(), Wish.SMALL) / 2;
            boolean across = Spot.isAcross(limit.side());
            // Names of upright lines stand below and above them in turn, for there is no room between the lines.
            Point beyond = below ? b.plus(0, 9) : a.plus(0, -9);
            sheet.wish(wish(limit, across ? new Point(b.x() - half, b.y() - 8) : beyond, frame));
            below = !below;
            out += across ? Bands.LINE_ACROSS : Bands.LINE_UPRIGHT;
        }
    }

    /** A tree stands where it hides no pipe, for its place along the wall is not measured. */
    private static void tree(Limit tree, double out, Frame frame, Sheet sheet) {
        Point at = null;
        for (double share : SHARES) {
            double feet = tree.fromFeet() + (tree.toFeet() - tree.fromFeet()) * share;
            Point candidate = frame.at(new Spot(tree.side(), feet), out);
            at = at == null ? candidate : at;
            if (Occupied.leaves(Rect.around(candidate, 2 * TREE_RADIUS, 2 * TREE_RADIUS), sheet.shapes())) {
                at = candidate;
                break;
            }
        }
        sheet.draw(new Dot(at.x(), at.y(), TREE_RADIUS, Weight.THIN, Role.LIMIT, false));
        sheet.draw(new Dot(at.x(), at.y(), 1, Weight.THIN, Role.LIMIT, true));
        double half = LabelText.width(tree.text(), Wish.SMALL) / 2;
        sheet.wish(wish(tree, at.plus(TREE_RADIUS + 4 + half, 0), frame).anchored("start"));
    }

    /** A lot line runs past the whole side, unless it was found at several distances there. */
    private static boolean isOnlyLotLine(Limit limit, List<Limit> onSide) {
        return limit.kind() == LimitKind.PROPERTY_LINE
                && onSide.stream().filter(other -> other.kind() == limit.kind()).count() == 1;
    }

    private static Wish wish(Limit limit, Point target, Frame frame) {
        Rect zone = frame.outside(limit.side(), Bands.DRAIN);
        return Wish.small(limit.text(), Frame.WIDTH, Role.LIMIT, target, zone, 70, limit.text());
    }
}
