// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import spadework.ground.BodyStation;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.ground.FreeEnds;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.trench.Bank;

/** How far trenches at walls go on past the ends of their walls. */
final class DugEnds {
    private final Job job;
    private final double scale;
    private final FreeEnds free;

    /** @param scale points a foot */
    DugEnds(Job job, double scale) {
        this.job = job;
        this.scale = scale;
        this.free = new FreeEnds(job);
    }

    /** Feet that the trench goes on beyond an end of its wall: round an outside corner, or up a free end's face. */
    double beyond(Wall wall, boolean atEnd) {
        WallEnd end = new WallEnd(wall.label(), atEnd);
        for (Corner corner : job.corners()) {
            boolean first = corner.first().equals(end);
            if (first || corner.second().equals(end)) {
                WallEnd other = first ? corner.second() : corner.first();
                return corner.kind() == CornerKind.OUTSIDE ? reachAt(other) : 0;
            }
        }
        double depth = end(wall, atEnd).depth();
        return free.of(wall).contains(end) ? FreeEnds.run(wall, atEnd, Bank.of(job.site(), wall)) * depth : 0;
    }

    private double reachAt(WallEnd end) {
        Wall wall = job.getWall(end.wall());
        DigBody body = DigBodies.wall(job.site(), wall);
        double feet = body.width() + body.out(end(wall, end.atEnd()).depth());
        return scale > 0 ? Math.max(feet, DugShapes.LEAST_AT_WALL / scale) : feet;
    }

    private BodyStation end(Wall wall, boolean atEnd) {
        List<BodyStation> stations = DigBodies.wall(job.site(), wall).stations();
        return stations.get(atEnd ? stations.size() - 1 : 0);
    }
}
