// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.util.Set;

/**
 * Shields on site.
 *
 * @param count one for each crew that works at a time, moved along with it; 0 for none
 * @param places where they stand: labels of walls, empty for ground of no wall
 */
public record Shields(int count, Set<String> places) {

    public Shields {
        places = Set.copyOf(places);
    }
}
