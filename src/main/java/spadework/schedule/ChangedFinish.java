// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Predicate;
import spadework.job.Change;
import spadework.job.Job;
import spadework.law.DayCount;

/**
 * The contract's last day of work, later by the working days of change orders that were accepted.
 *
 * @param days working days that they add, Monday to Friday; below zero where they take days away
 */
public record ChangedFinish(LocalDate contract, int days) {

    /** With those of the accepted changes that count, and so many days more. */
    public static ChangedFinish of(Job job, Predicate<Change> counts, int more) {
        int days = more
                + job.agreement().acceptedChanges().stream()
                        .filter(counts)
                        .mapToInt(Change::days)
                        .sum();
        return new ChangedFinish(job.schedule().latestFinish(), days);
    }

    /** The day; empty where days were taken away, since nobody agreed on an earlier one. */
    public Optional<LocalDate> day() {
        if (days < 0) {
            return Optional.empty();
        }
        return Optional.of(days == 0 ? contract : DayCount.MONDAY_TO_FRIDAY.lastDay(contract, days));
    }
}
