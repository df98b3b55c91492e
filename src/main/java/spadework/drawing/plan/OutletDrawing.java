// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.drawing.shape.BreakMark;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpacing;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.SumpHole;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.SumpPit;
import spadework.measure.Length;
import spadework.place.OutlineSpot;

/**
 * Where water leaves: daylight splays open, a sump is a square pit, a storm connection a round one. A sump that stands
 * indoors is drawn there.
 */
public final class OutletDrawing {
    /** The widest name of an outlet, points. */
    static final double WIDEST = 100;

    /** From the middle of a sump, or from the house, to where its discharge pipe ends at the furthest, points. */
    static final double DISCHARGE = 28;

    /** How far a sump that stands indoors lies behind the outline of the house, points. */
    static final double INDOORS = 20;

    /** From the middle of an outlet's sign to its edge, points. */
    static final double RADIUS = 5;

    private OutletDrawing() {}

    /** The middle of each outlet, by label: before the pipes that feed it, and apart from its neighbors. */
    static Map<String, Point> places(Job job, PipeLayout water, PlanFrame frame, PlanBands bands) {
        Map<String, Point> places = new LinkedHashMap<>();
        for (Side side : Side.values()) {
            List<Outlet> here = job.water().outlets().stream()
                    .filter(outlet -> water.sides().get(outlet.label()) == side)
                    .sorted(Comparator.comparingDouble(outlet -> wanted(outlet, side, water, frame)))
                    .toList();
            List<Double> along = LabelSpacing.spread(
                    here.stream()
                            .map(outlet -> wanted(outlet, side, water, frame))
                            .toList(),
                    here.stream().map(outlet -> room(outlet, side)).toList(),
                    OutlineSpot.isAcross(side)
                            ? frame.sheet().left()
                            : frame.sheet().top(),
                    OutlineSpot.isAcross(side)
                            ? frame.sheet().right()
                            : frame.sheet().bottom());
            for (int i = 0; i < here.size(); i++) {
                double out = out(job, here.get(i), bands.on(side), frame.scale());
                Point on = frame.at(new OutlineSpot(side, 0), out);
                places.put(
                        here.get(i).label(),
                        OutlineSpot.isAcross(side) ? new Point(along.get(i), on.y()) : new Point(on.x(), along.get(i)));
            }
        }
        return places;
    }

    /** Points from the house to the middle of an outlet: as it was measured where that is near enough. */
    private static double out(Job job, Outlet outlet, PlanBands.Band band, double scale) {
        double behindEdge = DigBodies.of(job).stream()
                .filter(body -> body.kind() == BodyKind.SUMP_PIT && body.label().equals(outlet.label()))
                .mapToDouble(body -> body.length() / 2)
                .findFirst()
                .orElse(0);
        return isIndoors(outlet)
                ? -INDOORS
                : band.outlet(
                        fromHouse(outlet).map(away -> away.feet() + behindEdge).orElse(0.0), scale);
    }

    /** How far from the house an outlet was measured; of a sump the hole's edge, for its pipe leads further. */
    static Optional<Length> fromHouse(Outlet outlet) {
        return outlet.kind() == OutletKind.SUMP ? outlet.pit().flatMap(SumpPit::fromFooting) : outlet.fromHouse();
    }

    /** The mean of the places where its pipes come to that side, points along the sheet. */
    private static double wanted(Outlet outlet, Side side, PipeLayout water, PlanFrame frame) {
        double feet = water.runs().stream()
                .filter(run -> run.outlet().equals(outlet.label()))
                .mapToDouble(run -> water.comesIn(run, frame.size()))
                .average()
                .orElse(OutlineSpot.sideFeet(frame.size(), side) / 2);
        Point point = frame.at(new OutlineSpot(side, feet), 0);
        return OutlineSpot.isAcross(side) ? point.x() : point.y();
    }

    private static double room(Outlet outlet, Side side) {
        return OutlineSpot.isAcross(side)
                ? Math.min(WIDEST, LabelText.width(outlet.label(), LabelRequest.SMALL)) + 16
                : 26;
    }

    static void draw(
            Job job,
            PipeLayout water,
            Map<String, Point> places,
            PlanFrame frame,
            PlanWords words,
            DrawingSheet sheet) {
        for (Outlet outlet : job.water().outlets()) {
            Side side = water.sides().get(outlet.label());
            Point at = places.get(outlet.label());
            if (isBrokenOff(outlet, water)) {
                BreakMark.between(outward(at, side, -RADIUS - 1.5), outward(at, side, 1.5 - RADIUS + 3.5))
                        .draw(sheet);
            } else {
                symbol(outlet, side, at, sheet);
            }
            if (hasDischarge(outlet)) {
                DischargeDrawing.draw(outlet, at, side, frame, words, sheet);
            }
            double width = Math.min(WIDEST, LabelText.width(outlet.label(), LabelRequest.SMALL));
            double out = OutlineSpot.isAcross(side) ? 15 : RADIUS + 7 + width / 2;
            boolean indoors = isIndoors(outlet);
            Point target = outward(at, side, indoors ? -out : out);
            Rect zone = indoors ? frame.house().grown(-3) : frame.outside(side, PlanBands.DRAIN);
            sheet.wish(LabelRequest.small(
                            outlet.label(), WIDEST, Role.WATER, new LabelSpot(target, zone, 50), outlet.label())
                    .inBold()
                    .leaningToward(side));
        }
    }

    static boolean hasDischarge(Outlet outlet) {
        return outlet.kind() == OutletKind.SUMP
                && outlet.discharge().filter(Length::isPositive).isPresent();
    }

    /** Whether it is a sump that stands in the house. */
    static boolean isIndoors(Outlet outlet) {
        return outlet.kind() == OutletKind.SUMP && SumpHole.isInside(outlet);
    }

    /** Whether the job does not say where it lies, so that its pipe is broken off at the end and has no sign there. */
    static boolean isBrokenOff(Outlet outlet, PipeLayout water) {
        return water.unplaced().contains(outlet.label()) && !isIndoors(outlet);
    }

    static void symbol(Outlet outlet, Side side, Point at, DrawingSheet sheet) {
        switch (outlet.kind()) {
            case DAYLIGHT -> {
                Point tip = outward(at, side, RADIUS);
                double half = RADIUS;
                Point left = OutlineSpot.isAcross(side) ? tip.plus(-half, 0) : tip.plus(0, -half);
                Point right = OutlineSpot.isAcross(side) ? tip.plus(half, 0) : tip.plus(0, half);
                Point root = outward(at, side, -RADIUS);
                for (Point end : List.of(left, tip, right)) {
                    sheet.line(root, end, Weight.MEDIUM, Role.WATER, false);
                }
            }
            case SUMP -> {
                sheet.draw(
                        new Box(at.x() - RADIUS, at.y() - RADIUS, 2 * RADIUS, 2 * RADIUS, Weight.MEDIUM, Role.WATER));
                sheet.draw(new Dot(at.x(), at.y(), 2, Weight.THIN, Role.WATER, true));
            }
            case APPROVED_STORM -> {
                sheet.draw(new Dot(at.x(), at.y(), RADIUS, Weight.MEDIUM, Role.WATER, false));
                sheet.draw(new Dot(at.x(), at.y(), 2, Weight.THIN, Role.WATER, true));
            }
        }
    }

    /** The point that many points further from the house. */
    static Point outward(Point at, Side side, double by) {
        return switch (side) {
            case NORTH -> at.plus(0, -by);
            case SOUTH -> at.plus(0, by);
            case EAST -> at.plus(by, 0);
            case WEST -> at.plus(-by, 0);
        };
    }
}
