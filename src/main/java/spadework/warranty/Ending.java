// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.util.List;

/** Which parts of a warranty are in force on a day, and which of them end soon. */
public final class Ending {
    private Ending() {}

    /**
     * The parts in force on a day.
     *
     * @param months those whose last day is not later than the same date so many months on; 0 or more
     */
    public static List<CoveredPart> of(Warranty warranty, LocalDate on, int months) {
        return warranty.inForce(on).stream()
                .filter(part -> !part.lastDay().isAfter(on.plusMonths(months)))
                .toList();
    }
}
