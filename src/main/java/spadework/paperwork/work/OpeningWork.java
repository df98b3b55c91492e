// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;

/**
 * Openings in a wall.
 *
 * @param all each opening in a phrase
 */
public record OpeningWork(int windowWells, List<String> all) {

    public OpeningWork {
        all = List.copyOf(all);
    }
}
