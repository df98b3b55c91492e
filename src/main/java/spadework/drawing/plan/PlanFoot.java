// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Hatching;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.LineHops;
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

    /** Room for the sign of the north and its letter. */
    private static final double NORTH_WIDE = 24;

    /** How far the legend may go on past what stands below it. */
    private static final double PAST = 4;

    /** From the legend's first row to the scale bar, and from there to what follows. */
    private static final double TO_SCALE = 22;

    private static final double TO_REST = 22;

    private final PlanWords words;
    private final DrawingSheet sheet;
    private final double top;
    private final double right;
    private final double scale;

    PlanFoot(PlanFrame frame, PlanWords words, DrawingSheet sheet) {
        this(frame.sheet().bottom(), frame.sheet().right(), frame.scale(), words, sheet);
    }

    private PlanFoot(double top, double width, double scale, PlanWords words, DrawingSheet sheet) {
        this.words = words;
        this.sheet = sheet;
        this.top = top;
        this.right = width - EDGE;
        this.scale = scale;
    }

    /** Points by which a legend of several rows is taller than one of a single row. */
    static double moreRows(Job job, PlanWords words, double width) {
        return new PlanFoot(0, width, 1, words, new DrawingSheet()).lines(job, 0);
    }

    /** Draws the foot and tells where it ends, points from the top. */
    double draw(Job job, PlanLayout layout, AddedParts extra, List<String> key) {
        double bar = lines(job, top + 10) + TO_SCALE;
        double last = ScaleBar.draw(new Point(LEFT, bar), scale, words.scale(isBroken()), right - NORTH_WIDE, sheet);
        north(bar + 10);
        double below = extra(job, extra, last + TO_REST);
        below = outlets(job, layout, below);
        double bottom = key(key, below);
        return key.isEmpty() ? below - 7 : bottom;
    }

    private boolean isBroken() {
        return shows(Role.BREAK);
    }

    private boolean shows(Role role) {
        return sheet.shapes().stream().anyMatch(shape -> shape instanceof Line line && line.role() == role);
    }

    /**
     * Each outlet with its sign and the job's words for its place, then how pipes cross; tells where the next row
     * stands.
     */
    private double outlets(Job job, PlanLayout layout, double first) {
        double x = LEFT;
        double y = first;
        for (Outlet outlet : job.water().outlets()) {
            boolean unplaced = layout.water().unplaced().contains(outlet.label());
            String label = LabelText.cut(outlet.label(), LabelRequest.SMALL, OutletDrawing.WIDEST);
            double text = x + SIGN + LabelText.width(label, LabelRequest.SMALL, true) + 5;
            String what = outlet.what() + (unplaced ? " " + words.unplaced() : "");
            double width = LabelText.width(what, LabelRequest.SMALL);
            if (x > LEFT && text + width > right) {
                text += LEFT - x;
                x = LEFT;
                y += ROW;
            }
            String kept = LabelText.cut(what, LabelRequest.SMALL, right - text);
            OutletDrawing.symbol(outlet, Side.EAST, new Point(x + SIGN / 2 - 2, y - 3), sheet);
            sheet.draw(new Label(x + SIGN, y, label, "start", LabelRequest.SMALL, true, Role.WATER));
            sheet.draw(small(text, y, kept));
            x = text + LabelText.width(kept, LabelRequest.SMALL) + 2 * GAP;
        }
        Point at = new Point(x, y);
        at = RunDrawing.crosses(layout.ways()) ? crossing(at) : at;
        return at.x() == LEFT && at.y() == first ? first : at.y() + ROW;
    }

    /** What the lines mean, in as many rows as it takes; tells where the last one stands. */
    private double lines(Job job, double y) {
        Point at = new Point(LEFT, y);
        if (!job.walls().isEmpty()) {
            at = sample(at, Weight.THICK, Role.WALL, words.meaning("dug-wall"));
        }
        if (!DigBodies.of(job).isEmpty()) {
            at = dug(at, words.meaning("dug"));
        }
        if (!job.water().drains().isEmpty()) {
            at = sample(at, Weight.MEDIUM, Role.DRAIN, words.meaning("drain"));
            at = sample(at, Weight.MEDIUM, Role.MAIN, words.meaning("main"));
        }
        if (!job.water().roofLines().isEmpty()) {
            at = sample(at, Weight.THIN, Role.ROOF_LINE, words.meaning("roof-line"));
            at = fitting(at, 11, words.meaning("downspout"));
            sheet.draw(new Dot(at.x() + 3, at.y() - 3, 3, Weight.MEDIUM, Role.ROOF_LINE, true));
            at = said(at, 11, words.meaning("downspout"));
        }
        if (!job.water().drains().isEmpty()) {
            at = fitting(at, 10, words.meaning("cleanout"));
            sheet.draw(DrainDrawing.cleanout(at.plus(3, -3)));
            at = said(at, 10, words.meaning("cleanout"));
        }
        return at.y();
    }

    /** The place itself, or the next row where the words would leave the sheet. */
    private Point fitting(Point at, double before, String text) {
        boolean leaves = at.x() + before + LabelText.width(text, LabelRequest.SMALL) > right + PAST;
        return leaves && at.x() > LEFT ? new Point(LEFT, at.y() + ROW) : at;
    }

    /** Draws the words behind a sign and tells where the next sign stands. */
    private Point said(Point at, double before, String text) {
        sheet.draw(small(at.x() + before, at.y(), text));
        return at.plus(before + LabelText.width(text, LabelRequest.SMALL) + GAP, 0);
    }

    private Point dug(Point wanted, String text) {
        Point at = fitting(wanted, SAMPLE + 5, text);
        List<Line> edges = edges(at, Role.DUG);
        Hatching.within(edges, Role.DUG, List.of()).forEach(sheet::draw);
        edges.forEach(sheet::draw);
        return said(at, SAMPLE + 5, text);
    }

    private Point extraDug(Point wanted, String text) {
        Point at = fitting(wanted, SAMPLE + 5, text);
        edges(at, Role.EXTRA_DUG).forEach(sheet::draw);
        return said(at, SAMPLE + 5, text);
    }

    private static List<Line> edges(Point at, Role role) {
        List<Line> edges = new ArrayList<>();
        List<Point> corners = List.of(at.plus(0, -7), at.plus(SAMPLE, -7), at.plus(SAMPLE, 1), at.plus(0, 1));
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            edges.add(new Line(a.x(), a.y(), b.x(), b.y(), Weight.THIN, role, false));
        }
        return edges;
    }

    /** What is drawn apart, on a row of its own; tells where the next row stands. */
    private double extra(Job job, AddedParts extra, double y) {
        if (extra.labels().isEmpty()) {
            return y;
        }
        Point at = new Point(LEFT, y);
        boolean walls = job.walls().stream().anyMatch(wall -> extra.has(wall.label()));
        if (walls) {
            at = sample(at, Weight.THICK, Role.EXTRA_WALL, extra.wallName());
        }
        if (extra.labels().stream()
                .anyMatch(label -> job.walls().stream().noneMatch(w -> w.label().equals(label)))) {
            at = sample(at, Weight.MEDIUM, Role.EXTRA_PIPE, extra.pipeName());
        }
        if (shows(Role.EXTRA_DUG)) {
            at = extraDug(at, extra.dugName());
        }
        return at.y() + ROW;
    }

    /** Two pipes that cross, and two that join. */
    private Point crossing(Point wanted) {
        Point at = fitting(wanted, SAMPLE + 5, words.meaning("crossing"));
        List<Point> across = List.of(at.plus(SAMPLE / 2, -8), at.plus(SAMPLE / 2, 2));
        List<Point> over = List.of(at.plus(0, -3), at.plus(SAMPLE, -3));
        sheet.line(across.get(0), across.get(1), Weight.MEDIUM, Role.MAIN, false);
        sheet.pipe(LineHops.over(over, List.of(across)), Weight.MEDIUM, Role.MAIN, false);
        at = fitting(said(at, SAMPLE + 5, words.meaning("crossing")), SAMPLE + 5, words.meaning("joint"));
        sheet.line(at.plus(SAMPLE / 2, -8), at.plus(SAMPLE / 2, -3), Weight.MEDIUM, Role.MAIN, false);
        RunDrawing.joint(at.plus(SAMPLE / 2, -3), sheet);
        return sample(at, Weight.MEDIUM, Role.MAIN, words.meaning("joint"));
    }

    private Point sample(Point wanted, Weight weight, Role role, String text) {
        Point at = fitting(wanted, SAMPLE + 5, text);
        sheet.draw(new Line(at.x(), at.y() - 3, at.x() + SAMPLE, at.y() - 3, weight, role, false));
        return said(at, SAMPLE + 5, text);
    }

    private void north(double bottom) {
        double x = right - 6;
        sheet.draw(new Line(x, bottom, x, bottom - 18, Weight.MEDIUM, Role.PLAIN, true));
        sheet.draw(new Label(x - 7, bottom - 5, words.north(), "end", 10, true, Role.PLAIN));
    }

    private double key(List<String> key, double first) {
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
