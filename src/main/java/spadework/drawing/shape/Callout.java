// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** A few lines of words beside the figure, tied to what they name by a thin line. */
public record Callout(List<String> lines, Point target) {
    static final double LINE = 11;

    private static final double OFF = 3.5;
    private static final double MARK = 1.2;
    private static final double STEP = 2.5;
    private static final double NEAR = 60;
    private static final double FURTHEST = 500;

    /** Words broken into lines no wider than that. */
    public static Callout of(Point target, double widest, String... texts) {
        List<String> lines = new ArrayList<>();
        for (String text : texts) {
            lines.addAll(LabelText.wrapped(text, LabelRequest.SMALL, widest));
        }
        return new Callout(List.copyOf(lines), target);
    }

    /** The same words for a target that lies no further right than that. */
    public Callout leftOf(double x) {
        return new Callout(lines, new Point(Math.min(target.x(), x), target.y()));
    }

    public double width() {
        return lines.stream()
                .mapToDouble(line -> LabelText.width(line, LabelRequest.SMALL))
                .max()
                .orElse(0);
    }

    double height() {
        return (lines.size() - 1) * LINE + LabelRequest.SMALL;
    }

    /** Draws the words from that place down where they and their line are clear, and tells where they end. */
    public double draw(double left, double top, List<Line> leaders, DrawingSheet sheet) {
        double y = first(left, top, sheet, leaders);
        Line leader = leader(left, y);
        sheet.draw(leader);
        sheet.draw(new Dot(target.x(), target.y(), MARK, Weight.THIN, Role.DIMENSION, true));
        leaders.add(leader);
        for (int i = 0; i < lines.size(); i++) {
            double baseline = LabelText.baseline(new Rect(left, y + i * LINE, left, y + i * LINE + LabelRequest.SMALL));
            sheet.draw(new Label(left, baseline, lines.get(i), "start", LabelRequest.SMALL, false, Role.PLAIN));
        }
        return y + height();
    }

    /** The first clear place; lines cross only where nothing near is free of that. */
    private double first(double left, double top, DrawingSheet sheet, List<Line> leaders) {
        for (double y = top; y < top + NEAR; y += STEP) {
            Line leader = leader(left, y);
            if (isClear(left, y, sheet) && leaders.stream().noneMatch(other -> cross(leader, other))) {
                return y;
            }
        }
        double y = top;
        while (!isClear(left, y, sheet) && y < top + FURTHEST) {
            y += STEP;
        }
        return y;
    }

    private boolean isClear(double left, double y, DrawingSheet sheet) {
        Rect box = new Rect(left, y, left + width(), y + height());
        Line leader = leader(left, y);
        return OccupiedArea.leaves(box, sheet.shapes())
                && OccupiedArea.leavesLine(
                        new Point(leader.x1(), leader.y1()), new Point(leader.x2(), leader.y2()), sheet.shapes());
    }

    /** The callouts in an order in which their lines to a column cross as little as swapping neighbors can bring. */
    public static List<Callout> untangled(List<Callout> callouts, double left, double top, double apart) {
        List<Callout> order = new ArrayList<>(callouts);
        for (int round = 0; round < order.size(); round++) {
            double y = top;
            for (int i = 0; i + 1 < order.size(); i++) {
                Callout upper = order.get(i);
                Callout lower = order.get(i + 1);
                double next = y + upper.height() + apart;
                if (cross(upper.leader(left, y), lower.leader(left, next))) {
                    order.set(i, lower);
                    order.set(i + 1, upper);
                }
                y += order.get(i).height() + apart;
            }
        }
        return order;
    }

    /** From the target to the nearer side of the first line, or to above it where the target stands over the words. */
    private Line leader(double left, double y) {
        Point end;
        if (target.x() < left) {
            end = new Point(left - OFF, y + LabelRequest.SMALL / 2);
        } else if (target.x() > left + width()) {
            end = new Point(left + width() + OFF, y + LabelRequest.SMALL / 2);
        } else {
            end = new Point(target.x(), y - OFF);
        }
        return new Line(target.x(), target.y(), end.x(), end.y(), Weight.THIN, Role.DIMENSION, false);
    }

    private static boolean cross(Line a, Line b) {
        return side(a, b.x1(), b.y1()) * side(a, b.x2(), b.y2()) < 0
                && side(b, a.x1(), a.y1()) * side(b, a.x2(), a.y2()) < 0;
    }

    private static double side(Line line, double x, double y) {
        return (line.x2() - line.x1()) * (y - line.y1()) - (line.y2() - line.y1()) * (x - line.x1());
    }
}
