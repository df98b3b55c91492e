// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.WorkCalendar;
import spadework.law.FederalHoliday;

/**
 * Which days crews work: days of the week that the company works, less its own days off and, unless it works through
 * them, the federal holidays (5 USC 6103(a)) and the weekdays on which they are observed (5 USC 6103(b)).
 */
record WorkDays(WorkCalendar calendar) {
    /** By year; the same for every calendar. */
    private static final Map<Integer, Set<LocalDate>> HOLIDAYS = new ConcurrentHashMap<>();

    boolean isWorked(LocalDate day) {
        return calendar.workDays().contains(day.getDayOfWeek())
                && !calendar.daysOff().contains(day)
                && (calendar.worksHolidays() || !isHoliday(day));
    }

    private static boolean isHoliday(LocalDate day) {
        return HOLIDAYS.computeIfAbsent(day.getYear(), WorkDays::holidays).contains(day);
    }

    /** Holidays of a year, and the days of it on which they or those of the next year are observed. */
    private static Set<LocalDate> holidays(int year) {
        return Arrays.stream(FederalHoliday.values())
                .flatMap(holiday -> Stream.of(holiday.in(year), holiday.observedIn(year), holiday.observedIn(year + 1)))
                .collect(Collectors.toUnmodifiableSet());
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
