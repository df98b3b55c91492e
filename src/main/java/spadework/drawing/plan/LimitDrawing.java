// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.BreakMark;
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
import spadework.place.OutlineSpot;

/**
 * Trees and long-dash lines before the walls, each with its distance in words; what does not stand at its distance to
 * scale is tied to its wall by a broken line.
 */
public final class LimitDrawing {
    private static final double TREE_RADIUS = 7;
    private static final double[] SHARES = {0.25, 0.75, 0.5, 0.12, 0.88, 0.38, 0.62, 0, 1};

    /** How far a line's words stand from it without a tie, points. */
    private static final double CLOSE = 14;

    /** The tie between a limit and its wall, as far as it is drawn. */
    private static final double TIE = 9;

    private LimitDrawing() {}

    static void draw(Surroundings around, PlanFrame frame, PlanBands bands, PlanWords words, DrawingSheet sheet) {
        for (Side side : Side.values()) {
            boolean below = true;
            List<PlanLimit> here = around.on(side);
            for (PlanLimit limit : here) {
                double out = bands.on(side).out(limit, frame.scale());
                boolean broken = !BreakMark.isToScale(out, limit.distanceFeet() * frame.scale());
                if (limit.isTree()) {
                    tree(limit, out, broken, frame, words, sheet);
                } else {
                    List<OutlineSpot> span = span(limit, here, frame);
                    Point a = frame.at(span.get(0), out);
                    Point b = frame.at(span.get(1), out);
                    line(side, a, b, broken, sheet);
                    sheet.wish(names(name(limit, a, b, below, frame, words), a, b));
                    below = !below;
                }
            }
        }
    }

    /** From where to where a line is drawn along its side. */
    private static List<OutlineSpot> span(PlanLimit limit, List<PlanLimit> onSide, PlanFrame frame) {
        boolean whole = isOnlyLotLine(limit, onSide);
        double end = whole ? OutlineSpot.sideFeet(frame.size(), limit.side()) : limit.toFeet();
        return List.of(new OutlineSpot(limit.side(), whole ? 0 : limit.fromFeet()), new OutlineSpot(limit.side(), end));
    }

    private static void line(Side side, Point a, Point b, boolean broken, DrawingSheet sheet) {
        if (broken) {
            Point at = free(a, b, side, -TIE / 2, sheet);
            tie(OutletDrawing.outward(at, side, TIE / 2), side, sheet);
        }
        sheet.line(a, b, Weight.THIN, Role.LIMIT, false);
    }

    /** Close to the line; else tied to it, so that the words are read with no other line; else as near as may be. */
    private static List<LabelRequest> names(LabelRequest name, Point a, Point b) {
        List<LabelRequest> names = new ArrayList<>();
        names.add(name.withSpot(new LabelSpot(name.target(), name.zone(), CLOSE)));
        for (double share : SHARES) {
            Point from = b.toward(a, share);
            LabelSpot spot = new LabelSpot(from, name.zone(), name.reach());
            names.add(name.withSpot(spot).withLeader(Optional.of(from)));
        }
        names.add(name);
        return names;
    }

    private static LabelRequest name(
            PlanLimit limit, Point a, Point b, boolean below, PlanFrame frame, PlanWords words) {
        double half = LabelText.width(limit.text(words), LabelRequest.SMALL) / 2;
        // Names of upright lines stand below and above them in turn, for there is no room between the lines.
        Point beyond = below ? b.plus(0, 9) : a.plus(0, -9);
        boolean across = OutlineSpot.isAcross(limit.side());
        return wish(limit, across ? new Point(b.x() - half, b.y() - 8) : beyond, frame, words);
    }

    /** A tree stands where it hides no pipe, for its place along the wall is not measured. */
    private static void tree(
            PlanLimit tree, double out, boolean broken, PlanFrame frame, PlanWords words, DrawingSheet sheet) {
        Point a = frame.at(new OutlineSpot(tree.side(), tree.fromFeet()), out);
        Point b = frame.at(new OutlineSpot(tree.side(), tree.toFeet()), out);
        Point at = free(a, b, tree.side(), 0, sheet);
        if (broken) {
            tie(OutletDrawing.outward(at, tree.side(), -TREE_RADIUS), tree.side(), sheet);
        }
        sheet.draw(new Dot(at.x(), at.y(), TREE_RADIUS, Weight.THIN, Role.LIMIT, false));
        sheet.draw(new Dot(at.x(), at.y(), 1, Weight.THIN, Role.LIMIT, true));
        double half = LabelText.width(tree.text(words), LabelRequest.SMALL) / 2;
        sheet.wish(wish(tree, at.plus(TREE_RADIUS + 4 + half, 0), frame, words).anchored("start"));
    }

    /** The first place between two points at which a tree, or a tie that much further out, hides nothing. */
    private static Point free(Point a, Point b, Side side, double out, DrawingSheet sheet) {
        double size = 2 * TREE_RADIUS;
        List<Point> free = Arrays.stream(SHARES)
                .mapToObj(share -> OutletDrawing.outward(a.toward(b, share), side, out))
                .filter(at -> OccupiedArea.leaves(Rect.around(at, size, out < 0 ? TIE : size), sheet.shapes()))
                .toList();
        return free.stream()
                .filter(at -> !isInLineWithTree(at, side, sheet))
                .findFirst()
                .or(() -> free.stream().findFirst())
                .orElseGet(() -> OutletDrawing.outward(a.toward(b, SHARES[0]), side, out));
    }

    /** A tie there would seem to run on through a tree that stands nearer to the wall or farther from it. */
    private static boolean isInLineWithTree(Point at, Side side, DrawingSheet sheet) {
        boolean across = OutlineSpot.isAcross(side);
        return sheet.shapes().stream()
                .filter(shape -> shape instanceof Dot dot && dot.role() == Role.LIMIT && !dot.filled())
                .map(Dot.class::cast)
                .anyMatch(tree -> Math.abs(across ? tree.x() - at.x() : tree.y() - at.y()) < 2 * TREE_RADIUS);
    }

    /** The end of a line from the wall, with its mark. */
    private static void tie(Point outer, Side side, DrawingSheet sheet) {
        Point inner = OutletDrawing.outward(outer, side, -TIE);
        BreakMark mark = BreakMark.between(inner, outer);
        sheet.line(inner, mark.before(), Weight.THIN, Role.DIMENSION, false);
        sheet.line(mark.after(), outer, Weight.THIN, Role.DIMENSION, false);
        mark.draw(sheet);
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
