// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import spadework.company.Company;
import spadework.job.Job;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Measuring;
import spadework.takeoff.Takeoff;

/** A measured job with what is counted by days, and the calendar of crews that it was counted on. */
public record ScheduledTakeoff(Takeoff takeoff, CrewCalendar calendar) {

    /**
     * Measures a job, lays its work onto days, and counts them.
     *
     * @param book as this job uses it
     */
    public static ScheduledTakeoff of(Job job, Company company, PriceBook book) {
        Takeoff measured = Measuring.of(job, book);
        CrewCalendar calendar = CrewCalendar.of(job, company, book, measured);
        return new ScheduledTakeoff(DayQuantities.added(job, book, measured, calendar), calendar);
    }
}
