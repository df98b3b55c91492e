// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import spadework.job.Waits;
import spadework.measure.Percent;

/**
 * When the contractor's crews work.
 *
 * @param crews how many work at a time on one job, from 1
 * @param hoursPerDay of a crew on site, above 0, at most 16
 * @param workDays of the week; at least one
 * @param worksHolidays whether crews work on federal holidays too
 * @param daysOff further days on which nobody works
 * @param weather days kept for bad weather, as a share of the days of work, from 0 to 100%
 * @param standingDays working days in a row that a machine may stand idle on site before it is taken away, from 1
 * @param waits usual waits of this contractor
 */
public record WorkCalendar(
        int crews,
        BigDecimal hoursPerDay,
        List<DayOfWeek> workDays,
        boolean worksHolidays,
        List<LocalDate> daysOff,
        Percent weather,
        int standingDays,
        Waits waits) {

    /** Where the usual figures come from. */
    public static final String SOURCE = "common practice, no source";

    /**
     * What is taken where the company says nothing: one crew, 8 hours, Monday to Friday but federal holidays, a day in
     * five kept for weather, machines taken away after five idle days. Common practice, no source.
     */
    public static final WorkCalendar USUAL = new WorkCalendar(
            1,
            BigDecimal.valueOf(8),
            List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY),
            false,
            List.of(),
            Percent.of("20"),
            5,
            Waits.NONE);

    public WorkCalendar {
        workDays = List.copyOf(workDays);
        daysOff = List.copyOf(daysOff);
    }
}
