// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.function.IntFunction;

/** The eleven legal public holidays of 5 USC 6103(a), on the day the statute names. */
public enum FederalHoliday {
    NEW_YEARS_DAY(year -> LocalDate.of(year, Month.JANUARY, 1)),
    KING_BIRTHDAY(year -> nthMonday(year, Month.JANUARY, 3)),
    WASHINGTON_BIRTHDAY(year -> nthMonday(year, Month.FEBRUARY, 3)),
    MEMORIAL_DAY(year -> LocalDate.of(year, Month.MAY, 1).with(TemporalAdjusters.lastInMonth(DayOfWeek.MONDAY))),
    JUNETEENTH(year -> LocalDate.of(year, Month.JUNE, 19)),
    INDEPENDENCE_DAY(year -> LocalDate.of(year, Month.JULY, 4)),
    LABOR_DAY(year -> nthMonday(year, Month.SEPTEMBER, 1)),
    COLUMBUS_DAY(year -> nthMonday(year, Month.OCTOBER, 2)),
    VETERANS_DAY(year -> LocalDate.of(year, Month.NOVEMBER, 11)),
    THANKSGIVING(year ->
            LocalDate.of(year, Month.NOVEMBER, 1).with(TemporalAdjusters.dayOfWeekInMonth(4, DayOfWeek.THURSDAY))),
    CHRISTMAS(year -> LocalDate.of(year, Month.DECEMBER, 25));

    private final IntFunction<LocalDate> day;

    FederalHoliday(IntFunction<LocalDate> day) {
        this.day = day;
    }

    /** The day itself in a year. */
    public LocalDate in(int year) {
        return day.apply(year);
    }

    /**
     * The day on which it is observed: Friday for a Saturday (5 USC 6103(b)(1)), Monday for a Sunday (E.O. 11582, from
     * memory). It may fall into the year before.
     */
    public LocalDate observedIn(int year) {
        LocalDate date = in(year);
        return switch (date.getDayOfWeek()) {
            case SATURDAY -> date.minusDays(1);
            case SUNDAY -> date.plusDays(1);
            default -> date;
        };
    }

    private static LocalDate nthMonday(int year, Month month, int n) {
        return LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(n, DayOfWeek.MONDAY));
    }
}
