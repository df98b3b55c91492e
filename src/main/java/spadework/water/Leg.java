// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.Corner;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;

/**
 * One wall as a footing drain passes it.
 *
 * @param backward true when the drain runs from the wall's end to its start
 * @param corner the corner through which it goes on, if it goes on through one
 */
public record Leg(Wall wall, boolean backward, Optional<Corner> corner) {

    /** The walls of a drain in order, each turned as the corners between them say. */
    public static List<Leg> of(Job job, FootingDrain drain) {
        List<Leg> legs = new ArrayList<>();
        List<String> along = drain.along();
        for (int i = 0; i < along.size(); i++) {
            Optional<Corner> before = i > 0 ? between(job, along.get(i - 1), along.get(i)) : Optional.empty();
            Optional<Corner> after =
                    i + 1 < along.size() ? between(job, along.get(i), along.get(i + 1)) : Optional.empty();
            String wall = along.get(i);
            boolean backward = before.map(corner -> atEnd(corner, wall))
                    .or(() -> after.map(corner -> !atEnd(corner, wall)))
                    .orElse(false);
            legs.add(new Leg(job.getWall(wall), backward, after));
        }
        return legs;
    }

    private static Optional<Corner> between(Job job, String one, String other) {
        return job.corners().stream()
                .filter(corner -> joins(corner, one, other) || joins(corner, other, one))
                .findFirst();
    }

    private static boolean joins(Corner corner, String first, String second) {
        return corner.first().wall().equals(first) && corner.second().wall().equals(second);
    }

    private static boolean atEnd(Corner corner, String wall) {
        return corner.first().wall().equals(wall)
                ? corner.first().atEnd()
                : corner.second().atEnd();
    }

    /** Depth to the footing's top where the drain comes to the wall. */
    public Length depthIn() {
        return backward ? wall.depthEnd() : wall.depthStart();
    }

    /** Depth to the footing's top where the drain leaves the wall. */
    public Length depthOut() {
        return backward ? wall.depthStart() : wall.depthEnd();
    }
}
