// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * What is dug, coated, piped and put back.
 *
 * @param protection what is done to keep house and yard from harm, one thing a line
 */
public record Work(
        List<Wall> walls,
        List<Corner> corners,
        Water water,
        Restoration restoration,
        List<String> protection,
        Schedule schedule) {

    public Work {
        walls = List.copyOf(walls);
        corners = List.copyOf(corners);
        protection = List.copyOf(protection);
    }

    Work withWalls(List<Wall> others) {
        return new Work(others, corners, water, restoration, protection, schedule);
    }

    Work withWater(Water other) {
        return new Work(walls, corners, other, restoration, protection, schedule);
    }
}
