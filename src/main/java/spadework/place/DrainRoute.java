// SPDX-License-Identifier: Apache-2.0
package spadework.place;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import spadework.job.FootingDrain;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.takeoff.Cleanouts;

/**
 * A footing drain round the house.
 *
 * @param arms the spots that water passes, each arm in the direction of flow and ending at the tee
 * @param tee where the water leaves the drain
 * @param cleanouts where it can be flushed: the high end of each arm, and further ones evenly down to the tee
 */
public record DrainRoute(
        FootingDrain drain, List<List<OutlineSpot>> arms, OutlineSpot tee, List<OutlineSpot> cleanouts) {

    /** The way of a drain of that job. */
    public static DrainRoute of(Job job, FootingDrain drain) {
        List<Wall> walls = drain.along().stream().map(job::getWall).toList();
        List<OutlineSpot> spots = inOrder(walls, job.site().house());
        List<List<OutlineSpot>> arms;
        if (drain.teeAt() == TeeAt.MIDDLE) {
            arms = armsToTheMiddle(spots);
        } else {
            arms = List.of(drain.teeAt() == TeeAt.END ? spots : reversed(spots));
        }
        List<OutlineSpot> first = arms.get(0);
        int each = Cleanouts.fromEachEnd(job, drain);
        List<OutlineSpot> cleanouts = new ArrayList<>();
        for (List<OutlineSpot> arm : arms) {
            for (int i = 0; i < each; i++) {
                cleanouts.add(along(arm, (double) i / each));
            }
        }
        return new DrainRoute(drain, arms, first.get(first.size() - 1), cleanouts);
    }

    /** The spot that lies that share of an arm's way to the tee. */
    private static OutlineSpot along(List<OutlineSpot> arm, double share) {
        double whole = 0;
        for (int i = 0; i + 1 < arm.size(); i += 2) {
            whole += Math.abs(arm.get(i + 1).feet() - arm.get(i).feet());
        }
        double left = share * whole;
        for (int i = 0; i + 1 < arm.size(); i += 2) {
            double length = Math.abs(arm.get(i + 1).feet() - arm.get(i).feet());
            if (left <= length) {
                double forward = Math.signum(arm.get(i + 1).feet() - arm.get(i).feet());
                return new OutlineSpot(arm.get(i).side(), arm.get(i).feet() + forward * left);
            }
            left -= length;
        }
        return arm.get(0);
    }

    /** Two spots a wall, each wall turned so that the drain goes on where the wall before ended. */
    private static List<OutlineSpot> inOrder(List<Wall> walls, House house) {
        List<OutlineSpot> spots = new ArrayList<>();
        for (int i = 0; i < walls.size(); i++) {
            OutlineSpot start = OutlineSpot.startOf(walls.get(i));
            OutlineSpot end = OutlineSpot.endOf(walls.get(i));
            boolean turned;
            if (i > 0) {
                OutlineSpot before = spots.get(spots.size() - 1);
                turned = before.wayTo(end, house) < before.wayTo(start, house);
            } else {
                turned = walls.size() > 1 && isNearer(start, end, walls.get(1), house);
            }
            spots.add(turned ? end : start);
            spots.add(turned ? start : end);
        }
        return spots;
    }

    private static boolean isNearer(OutlineSpot spot, OutlineSpot than, Wall wall, House house) {
        OutlineSpot start = OutlineSpot.startOf(wall);
        OutlineSpot end = OutlineSpot.endOf(wall);
        return Math.min(spot.wayTo(start, house), spot.wayTo(end, house))
                < Math.min(than.wayTo(start, house), than.wayTo(end, house));
    }

    /** The middle of the walls' added length. */
    private static List<List<OutlineSpot>> armsToTheMiddle(List<OutlineSpot> spots) {
        double left = 0;
        for (int i = 0; i < spots.size(); i += 2) {
            left += Math.abs(spots.get(i + 1).feet() - spots.get(i).feet()) / 2;
        }
        int wall = 0;
        double length = Math.abs(spots.get(1).feet() - spots.get(0).feet());
        while (left > length && wall + 2 < spots.size()) {
            left -= length;
            wall += 2;
            length = Math.abs(spots.get(wall + 1).feet() - spots.get(wall).feet());
        }
        OutlineSpot from = spots.get(wall);
        double forward = Math.signum(spots.get(wall + 1).feet() - from.feet());
        OutlineSpot tee = new OutlineSpot(from.side(), from.feet() + forward * left);
        List<OutlineSpot> first = new ArrayList<>(spots.subList(0, wall + 1));
        first.add(tee);
        List<OutlineSpot> second = reversed(spots.subList(wall + 1, spots.size()));
        second.add(tee);
        return List.of(first, second);
    }

    private static List<OutlineSpot> reversed(List<OutlineSpot> spots) {
        List<OutlineSpot> back = new ArrayList<>(spots);
        Collections.reverse(back);
        return back;
    }
}
