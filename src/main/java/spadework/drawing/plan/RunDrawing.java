// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.BreakMark;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.LineHops;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Side;
import spadework.place.OutlineSpot;

/**
 * The solid pipes, along the house where they must, then straight to their outlet, and the downspouts. Where one
 * crosses another it hops; where its own lines join there is a point.
 */
public final class RunDrawing {
    private static final double WIDEST = 90;

    /** The point at a joint, smaller than a downspout, points. */
    static final double JOINT = 2;

    private RunDrawing() {}

    /** Whether any of them crosses another or a footing drain. */
    static boolean crosses(RunWays lying) {
        List<List<Point>> crossed = new ArrayList<>(lying.drains());
        for (PlanRun run : lying.water().runs()) {
            List<List<Point>> own = lying.all(run);
            if (own.stream().anyMatch(way -> LineHops.over(way, crossed).size() > way.size())) {
                return true;
            }
            crossed.addAll(own);
        }
        return false;
    }

    static void draw(RunWays lying, AddedParts extra, DrawingSheet sheet) {
        List<List<Point>> crossed = new ArrayList<>(lying.drains());
        for (PlanRun run : lying.water().runs()) {
            Weight weight = run.isRoofWater() ? Weight.THIN : Weight.MEDIUM;
            Role role = extra.pipe(run.label(), run.role());
            for (OutlineSpot start : run.starts().subList(1, run.starts().size())) {
                boolean apart = fromExtra(start, lying.water(), extra);
                List<Point> joining = LineHops.over(lying.joining(run, start), crossed);
                sheet.pipe(joining, weight, apart ? Role.EXTRA_PIPE : role, false);
            }
            Optional<BreakMark> mark = lying.mark(run).filter(one -> !lying.isBrokenOff(run));
            lying.way(run)
                    .ifPresent(points -> mark.ifPresentOrElse(
                            one -> broken(points, one, weight, role, crossed, sheet),
                            () -> sheet.pipe(LineHops.over(points, crossed), weight, role, true)));
            List<List<Point>> own = lying.all(run);
            PipeJoints.of(own).forEach(joint -> joint(joint, sheet));
            if (run.isRoofWater()) {
                run.starts().forEach(start -> downspout(lying.frame().at(start, 0), sheet));
            }
            crossed.addAll(own);
        }
    }

    /** A pipe to its outlet, with a mark on its last reach. */
    private static void broken(
            List<Point> points,
            BreakMark mark,
            Weight weight,
            Role role,
            List<List<Point>> crossed,
            DrawingSheet sheet) {
        List<Point> before = new ArrayList<>(points.subList(0, points.size() - 1));
        before.add(mark.before());
        List<Point> after = List.of(mark.after(), points.get(points.size() - 1));
        sheet.pipe(LineHops.over(before, crossed), weight, role, false);
        sheet.pipe(LineHops.over(after, crossed), weight, role, true);
        mark.draw(sheet);
    }

    /** Names the runs, once they are drawn, each with its length. */
    static void names(RunWays lying, PlanWords words, DrawingSheet sheet) {
        for (PlanRun run : lying.water().runs()) {
            boolean named = !run.label().isEmpty() || lying.mark(run).isPresent();
            lying.way(run).filter(points -> named).ifPresent(points -> {
                String inKey = run.label().isEmpty()
                        ? words.fromHouse(run.outlet(), run.text())
                        : words.leads(run.text(), run.outlet());
                sheet.wish(name(run, inKey, points, lying));
            });
        }
    }

    /** Whether the pipe begins there at a drain that is drawn apart. */
    private static boolean fromExtra(OutlineSpot start, PipeLayout water, AddedParts extra) {
        return water.drains().stream()
                .anyMatch(
                        route -> extra.has(route.drain().label()) && route.tee().equals(start));
    }

    static void joint(Point at, DrawingSheet sheet) {
        sheet.draw(new Dot(at.x(), at.y(), JOINT, Weight.THIN, Role.MAIN, true));
    }

    private static void downspout(Point at, DrawingSheet sheet) {
        sheet.draw(new Dot(at.x(), at.y(), 3, Weight.MEDIUM, Role.ROOF_LINE, true));
    }

    /** The name with the length, or where that has no room the label alone, with the rest in the key. */
    private static List<LabelRequest> name(PlanRun run, String inKey, List<Point> points, RunWays lying) {
        Side side = lying.water().sideOf(run);
        LabelRequest whole = label(run, run.text(), inKey, points, side, lying);
        return run.label().isEmpty()
                ? List.of(whole)
                : List.of(
                        whole,
                        label(run, run.label(), inKey, points, side, lying).withExplained(true));
    }

    private static LabelRequest label(
            PlanRun run, String text, String inKey, List<Point> points, Side side, RunWays lying) {
        Point middle = points.get(points.size() - 2).toward(points.get(points.size() - 1), 0.5);
        // The name stands on the outer side of the fan of pipes that run together at the outlet.
        Point end = points.get(points.size() - 1);
        double half = Math.min(WIDEST, LabelText.width(text, LabelRequest.SMALL)) / 2;
        boolean across = OutlineSpot.isAcross(side);
        boolean straight = Math.abs(middle.x() - end.x()) <= 1;
        boolean before = across
                ? middle.x() < end.x() - 1 || (straight && isFirstOfSeveral(run, end, side, lying))
                : middle.y() <= end.y() + 1;
        Point target = across ? middle.plus(before ? -half - 6 : half + 6, 0) : middle.plus(0, before ? -11 : 11);
        LabelSpot spot = new LabelSpot(target, lying.frame().sheet().grown(-2), 60);
        LabelRequest wish = LabelRequest.small(text, WIDEST, run.role(), spot, inKey);
        return across ? wish.anchored(before ? "end" : "start") : wish;
    }

    /** Whether another pipe ends right of it on that side, and none left: between the two its name would be misread. */
    private static boolean isFirstOfSeveral(PlanRun run, Point end, Side side, RunWays lying) {
        List<Point> others = lying.water().runs().stream()
                .filter(other ->
                        !other.outlet().equals(run.outlet()) && lying.water().sideOf(other) == side)
                .flatMap(other -> lying.way(other).stream())
                .map(points -> points.get(points.size() - 1))
                .toList();
        return !others.isEmpty() && others.stream().allMatch(other -> other.x() > end.x());
    }
}
