// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import spadework.job.Access;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.trench.Bank;

/**
 * A job whose walls are dug in several ways.
 *
 * @param walls labels of the walls of each way, in the order of the ways; walls that need none are left out
 * @param priced what it comes to as it stands
 */
public record PlannedWays(Map<TrenchWay, List<String>> walls, TrenchChoice.Priced priced) {

    public PlannedWays {
        walls = Collections.unmodifiableMap(new EnumMap<>(walls));
    }

    /** The way of each wall that needs one; a slope without room is the shield that is dug instead. */
    static Map<TrenchWay, List<String>> of(Job job) {
        Map<TrenchWay, List<String>> walls = new EnumMap<>(TrenchWay.class);
        for (Wall wall : job.walls()) {
            if (TrenchLaw.needsWay(wall)) {
                walls.computeIfAbsent(way(job, wall), way -> new ArrayList<>()).add(wall.label());
            }
        }
        return walls;
    }

    private static TrenchWay way(Job job, Wall wall) {
        if (wall.digging().access() == Access.HAND) {
            return TrenchWay.HAND;
        }
        return switch (Bank.of(job.site(), wall).protection()) {
            case SLOPED, UPRIGHT -> TrenchWay.SLOPE;
            case BENCHED -> TrenchWay.BENCH;
            case SHIELDED -> TrenchWay.SHIELD;
        };
    }
}
