// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;

/**
 * What falls away from a job, by label; line items by code.
 *
 * @param pipes labels of drains, mains and roof lines
 * @param restoration less of it, taken from the job's own
 */
public record TakenAway(
        List<String> walls,
        List<String> pipes,
        List<String> downspouts,
        List<String> outlets,
        List<String> items,
        Optional<Restoration> restoration) {
    /** All stays. */
    public static final TakenAway NOTHING =
            new TakenAway(List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty());

    public TakenAway {
        walls = List.copyOf(walls);
        pipes = List.copyOf(pipes);
        downspouts = List.copyOf(downspouts);
        outlets = List.copyOf(outlets);
        items = List.copyOf(items);
    }
}
