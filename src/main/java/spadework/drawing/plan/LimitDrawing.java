// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.OccupiedArea;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.LimitKind;
import spadework.job.Side;

/** Trees and long-dash lines before the walls, each with its distance in words. */
public final class LimitDrawing {
    private static final double TREE_RADIUS = 7;
    private static final double[] SHARES = {0.25, 0.75, 0.5, 0.12, 0.88, 0.38, 0.62, 0, 1};

    private LimitDrawing() {}

    static void draw(Surroundings around, PlanFrame frame, PlanBands bands, PlanWords words, DrawingSheet sheet) {
        for (Side side : Side.values()) {
            PlanBands.Band band = bands.on(side);
            lines(around.lines(side, false), band.near(), frame, words, sheet);
            lines(around.lines(side, true), band.far(), frame, words, sheet);
            around.trees(side).forEach(tree -> tree(tree, band.trees(), frame, words, sheet));
        }
    }

    private static void lines(
            List<PlanLimit> limits, double first, PlanFrame frame, PlanWords words, DrawingSheet sheet) {
        double out = first;
        boolean below = true;
        for (PlanLimit limit : limits) {
            boolean whole = isOnlyLotLine(limit, limits);
            double feet = whole ? OutlineSpot.sideFeet(frame.size(), limit.side()) : 0;
            Point a = frame.at(new OutlineSpot(limit.side(), whole ? 0 : limit.fromFeet()), out);
            Point b = frame.at(new OutlineSpot(limit.side(), whole ? feet : limit.toFeet()), out);
            sheet.line(a, b, Weight.THIN, Role.LIMIT, false);
            double half = LabelText.width(limit.text(words), LabelRequest.SMALL) / 2;
            boolean across = OutlineSpot.isAcross(limit.side());
            // Names of upright lines stand below and above them in turn, for there is no room between the lines.
            Point beyond = below ? b.plus(0, 9) : a.plus(0, -9);
            sheet.wish(wish(limit, across ? new Point(b.x() - half, b.y() - 8) : beyond, frame, words));
            below = !below;
            out += across ? PlanBands.LINE_ACROSS : PlanBands.LINE_UPRIGHT;
        }
    }

    /** A tree stands where it hides no pipe, for its place along the wall is not measured. */
    private static void tree(PlanLimit tree, double out, PlanFrame frame, PlanWords words, DrawingSheet sheet) {
        Point at = null;
        for (double share : SHARES) {
            double feet = tree.fromFeet() + (tree.toFeet() - tree.fromFeet()) * share;
            Point candidate = frame.at(new OutlineSpot(tree.side(), feet), out);
            at = at == null ? candidate : at;
            if (OccupiedArea.leaves(Rect.around(candidate, 2 * TREE_RADIUS, 2 * TREE_RADIUS), sheet.shapes())) {
                at = candidate;
                break;
            }
        }
        sheet.draw(new Dot(at.x(), at.y(), TREE_RADIUS, Weight.THIN, Role.LIMIT, false));
        sheet.draw(new Dot(at.x(), at.y(), 1, Weight.THIN, Role.LIMIT, true));
        double half = LabelText.width(tree.text(words), LabelRequest.SMALL) / 2;
        sheet.wish(wish(tree, at.plus(TREE_RADIUS + 4 + half, 0), frame, words).anchored("start"));
    }

    /** A lot line runs past the whole side, unless it was found at several distances there. */
    private static boolean isOnlyLotLine(PlanLimit limit, List<PlanLimit> onSide) {
        return limit.kind() == LimitKind.PROPERTY_LINE
                && onSide.stream().filter(other -> other.kind() == limit.kind()).count() == 1;
    }

    private static LabelRequest wish(PlanLimit limit, Point target, PlanFrame frame, PlanWords words) {
        Rect zone = frame.outside(limit.side(), PlanBands.DRAIN);
        String text = limit.text(words);
        return LabelRequest.small(text, PlanFrame.WIDEST_WORDS, Role.LIMIT, new LabelSpot(target, zone, 70), text);
    }
}
