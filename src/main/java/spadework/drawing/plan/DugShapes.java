// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.drawing.shape.Point;
import spadework.ground.BodyKind;
import spadework.ground.BodyStation;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.Side;
import spadework.job.TestPit;
import spadework.job.Wall;
import spadework.place.OutlineSpot;

/** How each body that is dug lies on the sheet, open at grade. Widths are to scale where they can be seen so. */
final class DugShapes {
    /** The trench at a wall takes its drain in, points. */
    static final double LEAST_AT_WALL = PlanBands.DRAIN + 3;

    private static final double LEAST_RUN = 3;
    private static final double LEAST_HOLE = 15;

    private final Job job;
    private final PipeLayout water;
    private final Map<String, Point> outlets;
    private final PlanFrame frame;
    private final PlanBands bands;
    private final DugEnds ends;

    DugShapes(Job job, PipeLayout water, Map<String, Point> outlets, PlanFrame frame, PlanBands bands) {
        this.job = job;
        this.water = water;
        this.outlets = outlets;
        this.frame = frame;
        this.bands = bands;
        this.ends = new DugEnds(job, frame.scale());
    }

    /** Empty where nobody wrote down where it lies. */
    Optional<Area> of(DigBody body) {
        return switch (body.kind()) {
            case WALL -> Optional.of(wall(job.getWall(body.label()), body));
            case WINDOW_WELL -> Optional.of(wells(job.getWall(body.label()), body));
            case MAIN, ROOF_LINE -> Optional.of(run(body));
            case LEAD -> Optional.of(lead(body));
            case DISCHARGE -> Optional.of(discharge(body));
            case SUMP_PIT -> Optional.of(hole(body));
            case TEST_PIT -> testPit(body);
        };
    }

    /** Whether it is dug through the floor of the house. */
    boolean isIndoors(DigBody body) {
        return body.kind() == BodyKind.SUMP_PIT && OutletDrawing.isIndoors(outlet(body.label()));
    }

    private Outlet outlet(String label) {
        return job.water().outlets().stream()
                .filter(outlet -> outlet.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    /** Points that a wall's trench reaches out from the house, at its widest. */
    static double reach(Job job, Side side, double scale) {
        return job.walls().stream()
                .filter(wall -> wall.faces() == side)
                .map(wall -> DigBodies.wall(job.site(), wall))
                .mapToDouble(body -> Math.max(LEAST_AT_WALL, widest(body) * scale))
                .max()
                .orElse(0);
    }

    /** Points that trenches of the neighboring sides go on past the corners of the house, out from that side. */
    static double overhang(Job job, Side side, double scale) {
        DugEnds ends = new DugEnds(job, scale);
        double most = 0;
        for (Wall wall : job.walls()) {
            for (boolean atEnd : new boolean[] {false, true}) {
                if (past(wall.faces(), atEnd) == side) {
                    double gap = atEnd
                            ? OutlineSpot.sideFeet(job.site().house(), wall.faces())
                                    - OutlineSpot.endOf(wall).feet()
                            : wall.from().feet();
                    most = Math.max(most, (ends.beyond(wall, atEnd) - gap) * scale);
                }
            }
        }
        return most;
    }

    /** The side that lies past the end of a wall. */
    private static Side past(Side faces, boolean atEnd) {
        return OutlineSpot.isAcross(faces) ? (atEnd ? Side.EAST : Side.WEST) : (atEnd ? Side.SOUTH : Side.NORTH);
    }

    private static double widest(DigBody wall) {
        return wall.width() + wall.out(wall.deepest().feet());
    }

    private Area wall(Wall wall, DigBody body) {
        List<BodyStation> stations = body.stations();
        List<Point> outline = new ArrayList<>();
        outline.add(at(wall, -ends.beyond(wall, false), 0));
        outline.add(at(wall, wall.length().feet() + ends.beyond(wall, true), 0));
        for (int i = stations.size() - 1; i >= 0; i--) {
            BodyStation station = stations.get(i);
            double out = Math.max((body.width() + body.out(station.depth())) * frame.scale(), LEAST_AT_WALL);
            if (i == stations.size() - 1) {
                outline.add(at(wall, station.at() + ends.beyond(wall, true), out));
            }
            outline.add(at(wall, station.at(), out));
            if (i == 0) {
                outline.add(at(wall, station.at() - ends.beyond(wall, false), out));
            }
        }
        return area(outline);
    }

    private Point at(Wall wall, double along, double out) {
        return frame.at(new OutlineSpot(wall.faces(), wall.from().feet() + along), out);
    }

    /** Evenly along the wall, for their places are not measured; what lies within the trench is not seen. */
    private Area wells(Wall wall, DigBody body) {
        Area all = new Area();
        double each = body.length() / wall.windowWells();
        for (int i = 1; i <= wall.windowWells() && body.width() > 0; i++) {
            double middle = wall.length().feet() * i / (wall.windowWells() + 1);
            all.add(before(wall, middle, each, DigBodies.WELL_OUT));
        }
        return all;
    }

    private Area before(Wall wall, double middle, double length, double out) {
        return area(List.of(
                at(wall, middle - length / 2, 0),
                at(wall, middle + length / 2, 0),
                at(wall, middle + length / 2, out * frame.scale()),
                at(wall, middle - length / 2, out * frame.scale())));
    }

    private Area run(DigBody body) {
        Area all = new Area();
        for (PlanRun run : water.runs()) {
            if (run.label().equals(body.label())) {
                new RunWays(water, outlets, frame, bands).all(run).forEach(way -> all.add(along(way, body)));
            }
        }
        return all;
    }

    /** A pipe straight from a drain to its outlet has no name of its own. */
    private Area lead(DigBody body) {
        Area all = new Area();
        for (PlanRun run : water.runs()) {
            if (run.label().isEmpty() && isFrom(run, body.label())) {
                new RunWays(water, outlets, frame, bands).way(run).ifPresent(way -> all.add(along(way, body)));
            }
        }
        return all;
    }

    private boolean isFrom(PlanRun run, String drain) {
        return water.drains().stream()
                .filter(route -> route.drain().label().equals(drain))
                .anyMatch(route -> route.drain().into().equals(run.outlet())
                        && run.starts().contains(route.tee()));
    }

    private Area discharge(DigBody body) {
        Point from = outlets.get(body.label());
        Point to =
                DischargeDrawing.end(outlet(body.label()), from, water.sides().get(body.label()), frame.scale());
        return along(List.of(from, to), body);
    }

    private Area hole(DigBody body) {
        Point middle = outlets.get(body.label());
        double feet = body.length() + 2 * body.out(body.deepest().feet());
        double half = Math.max(feet * frame.scale(), LEAST_HOLE) / 2;
        return area(List.of(
                middle.plus(-half, -half),
                middle.plus(half, -half),
                middle.plus(half, half),
                middle.plus(-half, half)));
    }

    private Optional<Area> testPit(DigBody body) {
        Optional<TestPit> pit = job.site().testPits().stream()
                .filter(one -> one.label().equals(body.label()))
                .findFirst();
        return pit.flatMap(TestPit::wall).map(job::getWall).map(wall -> {
            double middle = wall.length().feet() / 2;
            return before(wall, middle, body.length(), body.width());
        });
    }

    /** The trench along a line of points, as wide at each place as it is at grade there. */
    private Area along(List<Point> way, DigBody body) {
        double whole = 0;
        for (int i = 1; i < way.size(); i++) {
            whole += way.get(i - 1).distanceTo(way.get(i));
        }
        Area all = new Area();
        double gone = 0;
        for (int i = 1; i < way.size(); i++) {
            Point a = way.get(i - 1);
            Point b = way.get(i);
            double length = a.distanceTo(b);
            if (length > 0) {
                double from = half(body, gone / whole);
                double to = half(body, (gone + length) / whole);
                // Pieces that meet at a turn lap over by half their width, so that the turn is dug whole.
                Point start = i > 1 ? a.toward(b, -from / length) : a;
                Point end = i < way.size() - 1 ? a.toward(b, 1 + to / length) : b;
                double x = -(b.y() - a.y()) / length;
                double y = (b.x() - a.x()) / length;
                all.add(area(List.of(
                        start.plus(x * from, y * from),
                        end.plus(x * to, y * to),
                        end.plus(-x * to, -y * to),
                        start.plus(-x * from, -y * from))));
            }
            gone += length;
        }
        return all;
    }

    /** Half the width at grade at a share of a run's length, points. */
    private double half(DigBody body, double share) {
        double at = share * body.length();
        List<BodyStation> stations = body.stations();
        int i = 1;
        while (i < stations.size() - 1 && stations.get(i).at() < at) {
            i++;
        }
        BodyStation a = stations.get(i - 1);
        BodyStation b = stations.get(i);
        double piece = b.at() > a.at() ? (at - a.at()) / (b.at() - a.at()) : 0;
        double depth = a.depth() + (b.depth() - a.depth()) * piece;
        return Math.max((body.width() + 2 * body.out(depth)) * frame.scale(), LEAST_RUN) / 2;
    }

    private static Area area(List<Point> corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners.get(0).x(), corners.get(0).y());
        corners.subList(1, corners.size()).forEach(corner -> path.lineTo(corner.x(), corner.y()));
        path.closePath();
        return new Area(path);
    }
}
