// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.drawing.shape.BreakMark;
import spadework.drawing.shape.Point;
import spadework.job.Side;
import spadework.place.OutlineSpot;

/**
 * The lines along which the solid pipes lie on the sheet, and where they are broken because they are not as long there
 * as they were measured.
 *
 * @param outlets the middle of each, by label
 */
record RunWays(PipeLayout water, Map<String, Point> outlets, PlanFrame frame, PlanBands bands) {
    private static final double SHORT_OF_OUTLET = 7;

    /** From a run's first start to its outlet; empty where it leads to none. */
    Optional<List<Point>> way(PlanRun run) {
        return Optional.ofNullable(outlets.get(run.outlet())).map(outlet -> way(run, outlet));
    }

    /** The lines of all footing drains. */
    List<List<Point>> drains() {
        double out = bands.drain(frame.scale());
        return water.drains().stream()
                .flatMap(drain -> DrainDrawing.ways(drain, frame, out).stream())
                .toList();
    }

    /** From another start of a run to the first. */
    List<Point> joining(PlanRun run, OutlineSpot start) {
        List<Point> points = new ArrayList<>(List.of(frame.at(start, band(run))));
        points.addAll(OutlinePath.way(frame, start, run.leaves(), lane(run)));
        return points;
    }

    /** All lines of a run: the one to its outlet, and those from its other starts. */
    List<List<Point>> all(PlanRun run) {
        List<List<Point>> ways = new ArrayList<>();
        way(run).ifPresent(ways::add);
        run.starts().stream().skip(1).forEach(start -> ways.add(joining(run, start)));
        return ways;
    }

    /** The mark on the last reach of a run that was measured and is not as long on the sheet. */
    Optional<BreakMark> mark(PlanRun run) {
        Optional<List<Point>> way = way(run);
        if (way.isEmpty() || run.length().isEmpty() || isToScale(run)) {
            return Optional.empty();
        }
        List<Point> points = way.get();
        return Optional.of(BreakMark.between(points.get(points.size() - 2), points.get(points.size() - 1)));
    }

    /** Whether the job does not say where its outlet lies: there the pipe is broken off at its end. */
    boolean isBrokenOff(PlanRun run) {
        return water.unplaced().contains(run.outlet()) && way(run).isPresent() && !holds(outlets.get(run.outlet()));
    }

    private boolean isToScale(PlanRun run) {
        Point outlet = outlets.get(run.outlet());
        if (run.label().isEmpty()) {
            // Nobody measured a pipe straight from a drain, only how far its outlet lies from the house.
            double out = frame.house().nearestTo(outlet).distanceTo(outlet);
            return holds(outlet) || Math.abs(out - bands.on(water.sideOf(run)).outlets()) > 0.01;
        }
        double drawn = SHORT_OF_OUTLET;
        for (List<Point> way : all(run)) {
            for (int i = 1; i < way.size(); i++) {
                drawn += way.get(i - 1).distanceTo(way.get(i));
            }
        }
        return BreakMark.isToScale(drawn, run.length().orElseThrow().feet() * frame.scale());
    }

    private double lane(PlanRun run) {
        return bands.lane(water.lanes().indexOf(run), frame.scale());
    }

    /** Points from the wall to where a run begins. */
    private double band(PlanRun run) {
        return run.isRoofWater() ? 0 : bands.drain(frame.scale());
    }

    private List<Point> way(PlanRun run, Point outlet) {
        List<Side> passed = water.passed(run, frame.size());
        Side side = passed.get(passed.size() - 1);
        List<Point> points = new ArrayList<>();
        points.add(frame.at(run.leaves(), band(run)));
        if (side != run.leaves().side()) {
            // It turns away from the house right before its outlet, which may lie beyond the corner.
            points.addAll(OutlinePath.way(frame, passed, run.leaves(), before(side, outlet), lane(run)));
        } else if (!holds(outlet)) {
            points.add(frame.at(run.leaves(), bands.on(side).words()));
        }
        Point away = points.get(points.size() - 1);
        points.add(outlet.toward(away, SHORT_OF_OUTLET / outlet.distanceTo(away)));
        return points;
    }

    private boolean holds(Point point) {
        return frame.house().nearestTo(point).equals(point);
    }

    /** The spot on a side, or beyond its corner, before which the outlet lies. */
    private OutlineSpot before(Side side, Point outlet) {
        double feet = OutlineSpot.isAcross(side)
                ? (outlet.x() - frame.house().left()) / frame.scale()
                : (outlet.y() - frame.house().top()) / frame.scale();
        double end = OutlineSpot.sideFeet(frame.size(), side);
        return new OutlineSpot(side, holds(outlet) ? Math.min(Math.max(feet, 0), end) : feet);
    }
}
