// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;

/**
 * The trench along a wall.
 *
 * @param depth the deeper end, to the bottom of the footing
 * @param protection one word: sloped, benched, shielded or upright
 * @param slope horizontal for each foot up, as {@code 1}
 * @param handShare the share dug by hand, empty when none
 * @param limits what limits the room beside the wall, one a line
 */
public record TrenchWork(
        String depth,
        String bottomWidth,
        String protection,
        String slope,
        boolean hand,
        String handShare,
        List<String> limits) {

    public TrenchWork {
        limits = List.copyOf(limits);
    }
}
