// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spadework.job.Corner;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.trench.Bank;

/** Where the trench of a wall ends and no other trench goes on from it. */
public final class FreeEnds {
    /** Walls in one line whose ends lie no farther apart share their trench; half an inch. */
    private static final double SAME_PLACE = 0.5 / 12;

    private final Set<WallEnd> met = new HashSet<>();
    private final Set<String> places = new HashSet<>();
    private final List<Wall> walls;

    public FreeEnds(Job job) {
        this.walls = job.walls();
        for (Corner corner : job.corners()) {
            met.add(corner.first());
            met.add(corner.second());
        }
        for (Wall wall : walls) {
            for (boolean atEnd : new boolean[] {false, true}) {
                places.add(place(wall, atEnd, 0));
            }
        }
    }

    /** The free ends of a wall, its start first. */
    public List<WallEnd> of(Wall wall) {
        List<WallEnd> free = new ArrayList<>();
        for (boolean atEnd : new boolean[] {false, true}) {
            WallEnd end = new WallEnd(wall.label(), atEnd);
            if (!met.contains(end) && !goesOn(wall, atEnd)) {
                free.add(end);
            }
        }
        return free;
    }

    /** Whether another wall of the same side begins where this one ends, or the other way round. */
    private boolean goesOn(Wall wall, boolean atEnd) {
        for (int step = -1; step <= 1; step++) {
            String there = place(wall, !atEnd, step);
            if (places.contains(there.substring(0, there.lastIndexOf('@')) + spot(wall, atEnd, step))) {
                return true;
            }
        }
        return false;
    }

    private static String place(Wall wall, boolean atEnd, int step) {
        return wall.faces() + (atEnd ? " end" : " start") + spot(wall, atEnd, step);
    }

    private static String spot(Wall wall, boolean atEnd, int step) {
        double feet = wall.from().feet() + (atEnd ? wall.length().feet() : 0);
        return "@" + (Math.round(feet / SAME_PLACE) + step);
    }

    /**
     * Run of the end's face for each rise: that of the bank, or of the ramp where it is flatter; 0 where the end stands
     * upright.
     */
    public static double run(Wall wall, boolean atEnd, Bank bank) {
        EndKind kind = wall.digging().ends().at(atEnd);
        double slope = bank.slope().number();
        return switch (kind) {
            case SHIELDED, AGAINST_SOMETHING -> 0;
            case OPEN, UNKNOWN -> slope;
            case RAMP ->
                Math.max(
                        slope,
                        wall.digging().ends().rampRun().map(run -> run.feet()).orElse(0.0));
        };
    }
}
