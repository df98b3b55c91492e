// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;

/**
 * What an option or a change order adds and takes away, as the papers describe it.
 *
 * @param walls walls to add, or to do otherwise, as they will be
 * @param finishes walls that stay and get another finish
 * @param runs pipes to add, or to lay otherwise, as they will be
 * @param things downspouts and line items to add, a phrase each
 * @param takenAway what falls away, a phrase each
 */
public record AlteredWork(
        List<WallWork> walls,
        List<WallWork> finishes,
        List<PipeWork> runs,
        List<OutletWork> outlets,
        List<String> things,
        List<String> takenAway) {

    public AlteredWork {
        walls = List.copyOf(walls);
        finishes = List.copyOf(finishes);
        runs = List.copyOf(runs);
        outlets = List.copyOf(outlets);
        things = List.copyOf(things);
        takenAway = List.copyOf(takenAway);
    }
}
