// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Side;

/** The solid pipes, along the house where they must, then straight to their outlet, and the downspouts. */
public final class RunDrawing {
    private static final double WIDEST = 90;
    private static final double SHORT_OF_OUTLET = 7;

    private RunDrawing() {}

    static void draw(
            PipeLayout water,
            AddedParts extra,
            Map<String, Point> outlets,
            PlanFrame frame,
            PlanBands bands,
            DrawingSheet sheet) {
        for (PlanRun run : water.runs()) {
            Point outlet = outlets.get(run.outlet());
            double out = PlanBands.lane(water.lanes().indexOf(run));
            Weight weight = run.isRoofWater() ? Weight.THIN : Weight.MEDIUM;
            Role role = extra.pipe(run.label(), run.role());
            for (OutlineSpot start : run.starts().subList(1, run.starts().size())) {
                List<Point> points = joining(run, start, out, frame);
                sheet.pipe(points, weight, fromExtra(start, water, extra) ? Role.EXTRA_PIPE : role, false);
            }
            if (outlet != null) {
                List<Point> points = way(run, water.passed(run, frame.size()), outlet, out, frame, bands);
                sheet.pipe(points, weight, role, true);
            }
            if (run.isRoofWater()) {
                run.starts().forEach(start -> downspout(frame.at(start, 0), sheet));
            }
        }
    }

    /** Names the runs, once they are drawn. */
    static void names(
            PipeLayout water,
            Map<String, Point> outlets,
            PlanFrame frame,
            PlanBands bands,
            PlanWords words,
            DrawingSheet sheet) {
        for (PlanRun run : water.runs()) {
            Point outlet = outlets.get(run.outlet());
            if (outlet != null && !run.label().isEmpty()) {
                double out = PlanBands.lane(water.lanes().indexOf(run));
                List<Point> points = way(run, water.passed(run, frame.size()), outlet, out, frame, bands);
                sheet.wish(name(run, water.sideOf(run), points, frame, words));
            }
        }
    }

    /** The lines along which a run lies: from its first start to its outlet, and from each other start to the first. */
    static List<List<Point>> ways(
            PlanRun run, PipeLayout water, Map<String, Point> outlets, PlanFrame frame, PlanBands bands) {
        double out = PlanBands.lane(water.lanes().indexOf(run));
        Point outlet = outlets.get(run.outlet());
        List<List<Point>> ways = new ArrayList<>();
        if (outlet != null) {
            ways.add(way(run, water.passed(run, frame.size()), outlet, out, frame, bands));
        }
        run.starts().stream().skip(1).forEach(start -> ways.add(joining(run, start, out, frame)));
        return ways;
    }

    /** From another start of a run to the first. */
    private static List<Point> joining(PlanRun run, OutlineSpot start, double out, PlanFrame frame) {
        List<Point> points = new ArrayList<>(List.of(frame.at(start, band(run))));
        points.addAll(OutlinePath.way(frame, start, run.leaves(), out));
        return points;
    }

    /** Whether the pipe begins there at a drain that is drawn apart. */
    private static boolean fromExtra(OutlineSpot start, PipeLayout water, AddedParts extra) {
        return water.drains().stream()
                .anyMatch(
                        route -> extra.has(route.drain().label()) && route.tee().equals(start));
    }

    /** Points from the wall to where a run begins. */
    private static double band(PlanRun run) {
        return run.isRoofWater() ? 0 : PlanBands.DRAIN;
    }

    private static List<Point> way(
            PlanRun run, List<Side> passed, Point outlet, double lane, PlanFrame frame, PlanBands bands) {
        Side side = passed.get(passed.size() - 1);
        List<Point> points = new ArrayList<>();
        points.add(frame.at(run.leaves(), band(run)));
        OutlineSpot turn = run.leaves();
        if (side != run.leaves().side()) {
            turn = new OutlineSpot(side, nearest(side, outlet, frame));
            points.addAll(OutlinePath.way(frame, passed, run.leaves(), turn, lane));
        }
        Point away = points.get(points.size() - 1);
        if (!holds(frame.house(), outlet)) {
            away = frame.at(turn, bands.on(side).words());
            points.add(away);
        }
        points.add(outlet.toward(away, SHORT_OF_OUTLET / outlet.distanceTo(away)));
        return points;
    }

    private static boolean holds(Rect house, Point point) {
        return house.nearestTo(point).equals(point);
    }

    /** Feet along a side of the house before which the outlet lies. */
    private static double nearest(Side side, Point outlet, PlanFrame frame) {
        double feet = OutlineSpot.isAcross(side)
                ? (outlet.x() - frame.house().left()) / frame.scale()
                : (outlet.y() - frame.house().top()) / frame.scale();
        return Math.min(Math.max(feet, 0), OutlineSpot.sideFeet(frame.size(), side));
    }

    private static void downspout(Point at, DrawingSheet sheet) {
        sheet.draw(new Dot(at.x(), at.y(), 3, Weight.MEDIUM, Role.ROOF_LINE, true));
    }

    private static LabelRequest name(PlanRun run, Side side, List<Point> points, PlanFrame frame, PlanWords words) {
        Point middle = points.get(points.size() - 2).toward(points.get(points.size() - 1), 0.5);
        // The name stands on the outer side of the fan of pipes that run together at the outlet.
        Point end = points.get(points.size() - 1);
        double half = Math.min(WIDEST, LabelText.width(run.label(), LabelRequest.SMALL)) / 2;
        boolean across = OutlineSpot.isAcross(side);
        boolean before = across ? middle.x() < end.x() - 1 : middle.y() <= end.y() + 1;
        Point target = across ? middle.plus(before ? -half - 4 : half + 4, 0) : middle.plus(0, before ? -9 : 9);
        String inKey = words.leads(run.label(), run.outlet());
        LabelRequest wish = LabelRequest.small(
                run.label(),
                WIDEST,
                run.role(),
                new LabelSpot(target, frame.sheet().grown(-2), 60),
                inKey);
        return across ? wish.anchored(before ? "end" : "start") : wish;
    }
}
