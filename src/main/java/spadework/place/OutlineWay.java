// SPDX-License-Identifier: Apache-2.0
package spadework.place;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import spadework.job.House;
import spadework.job.Side;

/** Ways along the outline of the house. */
public final class OutlineWay {
    private static final int SIDES = Side.values().length;

    private OutlineWay() {}

    /** The sides of the house that the shorter way passes, both ends' among them. */
    public static List<Side> sides(House house, OutlineSpot from, OutlineSpot to) {
        int clockwise = Math.floorMod(to.side().ordinal() - from.side().ordinal(), SIDES);
        boolean forward = clockwise == 1 || (clockwise == 2 && isShorterClockwise(house, from, to));
        int steps = forward ? clockwise : (SIDES - clockwise) % SIDES;
        List<Side> sides = new ArrayList<>();
        for (int step = 0; step <= steps; step++) {
            sides.add(Side.values()[Math.floorMod(from.side().ordinal() + (forward ? step : -step), SIDES)]);
        }
        return sides;
    }

    /** Feet along the outline by the shorter way. */
    public static double feet(House house, OutlineSpot from, OutlineSpot to) {
        double ahead = clockwise(house, from, to);
        return Math.min(ahead, around(house) - ahead);
    }

    /** Feet of the shortest pipe along the outline that passes all those spots; 0 for one or none. */
    public static double through(House house, Collection<OutlineSpot> spots) {
        double[] round = spots.stream()
                .mapToDouble(spot -> spot.clockwise(house) % around(house))
                .sorted()
                .toArray();
        if (round.length < 2) {
            return 0;
        }
        double widestGap = round[0] + around(house) - round[round.length - 1];
        for (int i = 1; i < round.length; i++) {
            widestGap = Math.max(widestGap, round[i] - round[i - 1]);
        }
        return around(house) - widestGap;
    }

    private static boolean isShorterClockwise(House house, OutlineSpot from, OutlineSpot to) {
        return clockwise(house, from, to) <= around(house) / 2;
    }

    private static double clockwise(House house, OutlineSpot from, OutlineSpot to) {
        double ahead = to.clockwise(house) - from.clockwise(house);
        return (ahead % around(house) + around(house)) % around(house);
    }

    private static double around(House house) {
        return 2 * (house.eastWest().feet() + house.northSouth().feet());
    }
}
