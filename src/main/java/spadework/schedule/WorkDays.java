// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.Arrays;
import spadework.company.WorkCalendar;
import spadework.law.FederalHoliday;

/**
 * Which days crews work: days of the week that the company works, less its own days off and, unless it works through
 * them, the federal holidays (5 USC 6103(a)) and the weekdays on which they are observed (5 USC 6103(b)).
 */
record WorkDays(WorkCalendar calendar) {

    boolean isWorked(LocalDate day) {
        return calendar.workDays().contains(day.getDayOfWeek())
                && !calendar.daysOff().contains(day)
                && (calendar.worksHolidays() || !isHoliday(day));
    }

    /** A holiday of next year may be observed at the end of this one, so both years are looked at. */
    private static boolean isHoliday(LocalDate day) {
        return Arrays.stream(FederalHoliday.values())
                .anyMatch(holiday -> holiday.in(day.getYear()).equals(day)
                        || holiday.observedIn(day.getYear()).equals(day)
                        || holiday.observedIn(day.getYear() + 1).equals(day));
    }

    /** The day itself where it is worked, else the next one that is. */
    LocalDate from(LocalDate day) {
        LocalDate found = day;
        while (!isWorked(found)) {
            found = found.plusDays(1);
        }
        return found;
    }

    /** Days of work between two days, both counted. */
    int between(LocalDate from, LocalDate to) {
        return (int) from.datesUntil(to.plusDays(1)).filter(this::isWorked).count();
    }
}
