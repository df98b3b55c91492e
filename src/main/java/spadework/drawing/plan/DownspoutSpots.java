// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import spadework.job.House;
import spadework.job.Side;
import spadework.place.OutlineSpot;

/**
 * Hands out places for downspouts that have none in the job: near the corners first, then between, clear of the mains.
 */
public final class DownspoutSpots {
    private static final double[] SHARES = {0.06, 0.94, 0.5, 0.28, 0.72, 0.17, 0.83, 0.39, 0.61};
    private static final double APART = 0.05;
    private static final double GOLDEN = 0.6180339887498949;

    private final House house;
    private final List<OutlineSpot> taken = new ArrayList<>();

    DownspoutSpots(House house, List<PlanRun> runs) {
        this.house = house;
        runs.forEach(run -> taken.addAll(run.starts()));
    }

    /** Keeps a place clear in which one stands. */
    void take(OutlineSpot spot) {
        taken.add(spot);
    }

    /** That many new places on a side. */
    List<OutlineSpot> next(Side side, int count) {
        List<OutlineSpot> spots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            OutlineSpot spot = next(side);
            taken.add(spot);
            spots.add(spot);
        }
        return spots;
    }

    private OutlineSpot next(Side side) {
        double feet = OutlineSpot.sideFeet(house, side);
        for (double share : SHARES) {
            OutlineSpot spot = new OutlineSpot(side, share * feet);
            boolean free = taken.stream()
                    .noneMatch(other -> other.side() == side && Math.abs(other.feet() - spot.feet()) < APART * feet);
            if (free) {
                return spot;
            }
        }
        // The side is crowded: the golden share spreads any further ones evenly.
        return new OutlineSpot(side, taken.size() * GOLDEN % 1 * feet);
    }
}
