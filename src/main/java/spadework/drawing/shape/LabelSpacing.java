// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.List;

/** Room between labels that stand in one row. */
public final class LabelSpacing {
    private LabelSpacing() {}

    /** Moves the middles apart, first toward the end, then back from it, so that each has its room. */
    public static List<Double> spread(List<Double> wanted, List<Double> room, double from, double to) {
        List<Double> along = new ArrayList<>();
        double free = from;
        for (int i = 0; i < wanted.size(); i++) {
            double at = Math.max(wanted.get(i), free + room.get(i) / 2);
            along.add(at);
            free = at + room.get(i) / 2;
        }
        double end = to;
        for (int i = wanted.size() - 1; i >= 0; i--) {
            along.set(i, Math.min(along.get(i), end - room.get(i) / 2));
            end = along.get(i) - room.get(i) / 2;
        }
        return along;
    }
}
