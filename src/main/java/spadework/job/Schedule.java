// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The days between which the work starts and is done, and what can move them.
 *
 * @param crews how many crews work at a time on this job; empty for the company's usual number
 * @param overtime hours a day beyond the company's, 0 to 8
 * @param waits of this job; what it leaves open is the company's
 */
public record Schedule(
        LocalDate earliestStart,
        LocalDate latestFinish,
        int workingDays,
        String note,
        Optional<Integer> crews,
        BigDecimal overtime,
        Waits waits) {

    /** A schedule that leaves crews, hours and waits to the company. */
    public Schedule(LocalDate earliestStart, LocalDate latestFinish, int workingDays, String note) {
        this(earliestStart, latestFinish, workingDays, note, Optional.empty(), BigDecimal.ZERO, Waits.NONE);
    }
}
