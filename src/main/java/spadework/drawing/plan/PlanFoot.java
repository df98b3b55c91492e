// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Hatching;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.ScaleBar;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.ground.DigBodies;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.Side;

/** Below the figure: what the lines mean, the scale bar, north, and the key of what found no room. */
public final class PlanFoot {
    private static final double LEFT = 10;
    private static final double EDGE = 10;
    private static final double SAMPLE = 14;
    private static final double GAP = 7;
    private static final double ROW = 13;
    private static final double SIGN = 17;

    private PlanFoot() {}

    /** Draws the foot and tells where it ends, points from the top. */
    static double draw(
            Job job, PipeLayout water, AddedParts extra, List<String> key, PlanFrame frame, DrawingSheet sheet) {
        double top = frame.sheet().bottom();
        double right = frame.sheet().right() - EDGE;
        lines(job, top + 10, sheet);
        ScaleBar.draw(LEFT, top + 32, frame.scale(), PlanWords.SCALE, sheet);
        north(right, top + 42, sheet);
        double below = extra(job, extra, top + 54, sheet);
        below = outlets(job, water, below, right, sheet);
        double bottom = key(key, below, right, sheet);
        return key.isEmpty() ? below - 7 : bottom;
    }

    /** Each outlet with its sign and the job's words for its place; tells where the next row stands. */
    private static double outlets(Job job, PipeLayout water, double first, double right, DrawingSheet sheet) {
        double x = LEFT;
        double y = first;
        for (Outlet outlet : job.water().outlets()) {
            boolean unplaced = water.unplaced().contains(outlet.label());
            String label = LabelText.cut(outlet.label(), LabelRequest.SMALL, OutletDrawing.WIDEST);
            double words = x + SIGN + LabelText.width(label, LabelRequest.SMALL, true) + 5;
            String what = outlet.what() + (unplaced ? " " + PlanWords.UNPLACED : "");
            double width = LabelText.width(what, LabelRequest.SMALL);
            if (x > LEFT && words + width > right) {
                words += LEFT - x;
                x = LEFT;
                y += ROW;
            }
            String kept = LabelText.cut(what, LabelRequest.SMALL, right - words);
            OutletDrawing.symbol(outlet, Side.EAST, new Point(x + SIGN / 2 - 2, y - 3), sheet);
            sheet.draw(new Label(x + SIGN, y, label, "start", LabelRequest.SMALL, true, Role.WATER));
            sheet.draw(small(words, y, kept));
            x = words + LabelText.width(kept, LabelRequest.SMALL) + 2 * GAP;
        }
        return job.water().outlets().isEmpty() ? first : y + ROW;
    }

    private static void lines(Job job, double y, DrawingSheet sheet) {
        double x = LEFT;
        if (!job.walls().isEmpty()) {
            x = sample(x, y, Weight.THICK, Role.WALL, PlanWords.DUG_WALL, sheet);
        }
        if (!DigBodies.of(job).isEmpty()) {
            x = dug(x, y, sheet);
        }
        if (!job.water().drains().isEmpty()) {
            x = sample(x, y, Weight.MEDIUM, Role.DRAIN, PlanWords.DRAIN, sheet);
            x = sample(x, y, Weight.MEDIUM, Role.MAIN, PlanWords.MAIN, sheet);
        }
        if (!job.water().roofLines().isEmpty()) {
            x = sample(x, y, Weight.THIN, Role.ROOF_LINE, PlanWords.ROOF_LINE, sheet);
            sheet.draw(new Dot(x + 3, y - 3, 3, Weight.MEDIUM, Role.ROOF_LINE, true));
            sheet.draw(small(x + 11, y, PlanWords.DOWNSPOUT));
            x += 11 + LabelText.width(PlanWords.DOWNSPOUT, LabelRequest.SMALL) + GAP;
        }
        if (!job.water().drains().isEmpty()) {
            sheet.draw(DrainDrawing.cleanout(new Point(x + 3, y - 3)));
            sheet.draw(small(x + 10, y, PlanWords.CLEANOUT));
        }
    }

    private static double dug(double x, double y, DrawingSheet sheet) {
        List<Line> edges = new ArrayList<>();
        List<Point> corners = List.of(
                new Point(x, y - 7), new Point(x + SAMPLE, y - 7), new Point(x + SAMPLE, y + 1), new Point(x, y + 1));
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            edges.add(new Line(a.x(), a.y(), b.x(), b.y(), Weight.THIN, Role.DUG, false));
        }
        Hatching.within(edges, Role.DUG, List.of()).forEach(sheet::draw);
        edges.forEach(sheet::draw);
        sheet.draw(small(x + SAMPLE + 5, y, PlanWords.DUG));
        return x + SAMPLE + 5 + LabelText.width(PlanWords.DUG, LabelRequest.SMALL) + GAP;
    }

    /** What is drawn apart, on a row of its own; tells where the next row stands. */
    private static double extra(Job job, AddedParts extra, double y, DrawingSheet sheet) {
        if (extra.labels().isEmpty()) {
            return y;
        }
        double x = LEFT;
        boolean walls = job.walls().stream().anyMatch(wall -> extra.has(wall.label()));
        if (walls) {
            x = sample(x, y, Weight.THICK, Role.EXTRA_WALL, extra.wallName(), sheet);
        }
        if (extra.labels().stream()
                .anyMatch(label -> job.walls().stream().noneMatch(w -> w.label().equals(label)))) {
            sample(x, y, Weight.MEDIUM, Role.EXTRA_PIPE, extra.pipeName(), sheet);
        }
        return y + ROW;
    }

    private static double sample(double x, double y, Weight weight, Role role, String text, DrawingSheet sheet) {
        sheet.draw(new Line(x, y - 3, x + SAMPLE, y - 3, weight, role, false));
        sheet.draw(small(x + SAMPLE + 5, y, text));
        return x + SAMPLE + 5 + LabelText.width(text, LabelRequest.SMALL) + GAP;
    }

    private static void north(double right, double bottom, DrawingSheet sheet) {
        double x = right - 6;
        sheet.draw(new Line(x, bottom, x, bottom - 18, Weight.MEDIUM, Role.PLAIN, true));
        sheet.draw(new Label(x - 7, bottom - 5, PlanWords.NORTH, "end", 10, true, Role.PLAIN));
    }

    private static double key(List<String> key, double first, double right, DrawingSheet sheet) {
        double x = LEFT;
        double y = first;
        for (String entry : key) {
            String text = LabelText.cut(entry, LabelRequest.SMALL, right - LEFT);
            double width = LabelText.width(text, LabelRequest.SMALL);
            if (x > LEFT && x + width > right) {
                x = LEFT;
                y += ROW;
            }
            sheet.draw(small(x, y, text));
            x += width + 2 * GAP;
        }
        return y + 6;
    }

    private static Label small(double x, double y, String text) {
        return new Label(x, y, text, "start", LabelRequest.SMALL, false, Role.PLAIN);
    }
}
