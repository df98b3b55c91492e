// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spadework.drawing.shape.Point;

/** Where lines of one and the same pipe run together: there its water joins. */
final class PipeJoints {
    private static final double NEAR = 0.05;

    private PipeJoints() {}

    /** Each place that at least three ways of the pipe lead from. */
    static List<Point> of(List<List<Point>> ways) {
        List<Point> joints = new ArrayList<>();
        for (List<Point> way : ways) {
            for (Point corner : way) {
                boolean known = joints.stream().anyMatch(joint -> joint.distanceTo(corner) < NEAR);
                if (!known && leaving(corner, ways).size() >= 3) {
                    joints.add(corner);
                }
            }
        }
        return joints;
    }

    /** Directions in whole degrees in which lines leave a place. */
    private static Set<Long> leaving(Point place, List<List<Point>> ways) {
        Set<Long> directions = new HashSet<>();
        for (List<Point> way : ways) {
            for (int i = 1; i < way.size(); i++) {
                Point a = way.get(i - 1);
                Point b = way.get(i);
                if (a.distanceTo(place) + place.distanceTo(b) - a.distanceTo(b) < NEAR / 100) {
                    direction(place, a, directions);
                    direction(place, b, directions);
                }
            }
        }
        return directions;
    }

    private static void direction(Point place, Point end, Set<Long> directions) {
        if (place.distanceTo(end) >= NEAR) {
            double degrees = Math.toDegrees(Math.atan2(end.y() - place.y(), end.x() - place.x()));
            directions.add(Math.floorMod(Math.round(degrees), 360L));
        }
    }
}
