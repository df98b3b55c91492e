// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Stations of a body, with more of them where its depth passes certain marks. */
final class Stations {
    private Stations() {}

    /** One more station wherever the depth, straight between two, passes one of these. */
    static List<BodyStation> split(List<BodyStation> stations, List<Double> depths) {
        List<BodyStation> split = new ArrayList<>();
        for (BodyStation station : stations) {
            if (!split.isEmpty()) {
                split.addAll(between(split.get(split.size() - 1), station, depths));
            }
            split.add(station);
        }
        return split;
    }

    private static List<BodyStation> between(BodyStation from, BodyStation to, List<Double> depths) {
        boolean down = to.depth() > from.depth();
        return depths.stream()
                .filter(depth -> (from.depth() - depth) * (to.depth() - depth) < 0)
                .sorted((a, b) -> down ? Double.compare(a, b) : Double.compare(b, a))
                .map(depth -> new BodyStation(
                        from.at() + (to.at() - from.at()) * (depth - from.depth()) / (to.depth() - from.depth()),
                        depth,
                        Optional.empty()))
                .toList();
    }
}
