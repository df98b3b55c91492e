// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;

/**
 * What stops the work until somebody has written or looked.
 *
 * @param says what it is and what it holds up
 * @param blanks what is written in by hand, each before a line
 * @param ticks what is ticked once it is so
 */
public record CrewStop(String says, List<String> blanks, List<String> ticks) {

    public CrewStop {
        blanks = List.copyOf(blanks);
        ticks = List.copyOf(ticks);
    }
}
