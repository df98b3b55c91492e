// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.place.OutlineSpot;

/** Jobs by seed: one to twelve walls on any side, drains, mains, roof lines, outlets and what stands around. */
public final class RandomJobs {
    private static final String[] PLACES = {
        "swale along the north lot line",
        "ditch on the east",
        "foot of the bank below the garden",
        "street drain south of the house",
        "hollow to the west"
    };

    private static final String[] LONG = {"Kitchen", "Back porch", "Garage side", "Long wall of the old wing"};

    private RandomJobs() {}

    public static Job of(long seed) {
        Random random = new Random(seed);
        double eastWest = 24 + random.nextInt(50);
        double northSouth = 20 + random.nextInt(30);
        PlanJob plan = PlanJob.house(eastWest, northSouth);
        List<String> walls = walls(random, plan, eastWest, northSouth);
        int outlets = 1 + random.nextInt(3);
        for (int i = 0; i < outlets; i++) {
            plan.outlet("O" + (i + 1), pick(random, OutletKind.values()), pick(random, PLACES));
        }
        int mains = random.nextInt(3);
        for (int i = 0; i < mains; i++) {
            plan.main("M" + (i + 1), "O" + (1 + random.nextInt(outlets)));
        }
        int half = walls.size() / 2;
        List<List<String>> groups =
                half == 0 ? List.of(walls) : List.of(walls.subList(0, half), walls.subList(half, walls.size()));
        for (int i = 0; i < groups.size(); i++) {
            String into = mains == 0 ? "O1" : "M" + (1 + random.nextInt(mains));
            plan.drain(
                    "D" + (i + 1),
                    pick(random, TeeAt.values()),
                    into,
                    groups.get(i).toArray(new String[0]));
        }
        int roofLines = random.nextInt(4);
        for (int i = 0; i < roofLines; i++) {
            plan.roofLine("R" + (i + 1), "O" + (1 + random.nextInt(outlets)));
            for (int j = random.nextInt(4); j > 0; j--) {
                plan.downspout("DS" + i + j, "R" + (i + 1));
            }
        }
        for (int i = random.nextInt(6); i > 0; i--) {
            plan.limit(
                    pick(random, LimitKind.values()),
                    pick(random, walls.toArray(new String[0])),
                    2 + random.nextInt(40) / 2.0);
        }
        return plan.job();
    }

    /** Walls clockwise, two neighbors on a side never overlapping. */
    private static List<String> walls(Random random, PlanJob plan, double eastWest, double northSouth) {
        int count = 1 + random.nextInt(12);
        int[] onSide = new int[4];
        for (int i = 0; i < count; i++) {
            onSide[random.nextInt(4)]++;
        }
        boolean longNames = random.nextInt(4) == 0;
        List<String> labels = new ArrayList<>();
        for (Side side : Side.values()) {
            double feet = OutlineSpot.isAcross(side) ? eastWest : northSouth;
            int here = onSide[side.ordinal()];
            for (int i = 0; i < here; i++) {
                double part = feet / here;
                double length = Math.rint(part * (0.6 + 0.4 * random.nextDouble()) * 2) / 2;
                String label = longNames
                        ? LONG[labels.size() % LONG.length] + " " + labels.size()
                        : String.valueOf((char) ('A' + labels.size()));
                plan.wall(label, side, part * i, Math.min(length, part));
                labels.add(label);
            }
        }
        return labels;
    }

    private static <T> T pick(Random random, T[] values) {
        return values[random.nextInt(values.length)];
    }
}
