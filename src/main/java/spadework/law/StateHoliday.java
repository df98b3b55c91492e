// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;

/**
 * A holiday of a state on which a business day is not counted there.
 *
 * @param rule on which day of the year it falls
 * @param status how far it was read: {@code R}, {@code RX}, {@code RS}, {@code M}
 */
public record StateHoliday(String name, Rule rule, String status) {

    /** On which day of a year. */
    public sealed interface Rule {
        /** The day; empty in a year that has none. */
        Optional<LocalDate> in(int year);
    }

    /** A day of a month. */
    public record OnDate(int month, int day) implements Rule {
        @Override
        public Optional<LocalDate> in(int year) {
            return day <= YearMonth.of(year, month).lengthOfMonth()
                    ? Optional.of(LocalDate.of(year, month, day))
                    : Optional.empty();
        }
    }

    /**
     * A weekday of a month, or so many days after it.
     *
     * @param nth from 1; 5 for the last
     */
    public record OnWeekday(int month, DayOfWeek weekday, int nth, int after) implements Rule {
        private static final int LAST = 5;

        @Override
        public Optional<LocalDate> in(int year) {
            LocalDate first = LocalDate.of(year, month, 1);
            return Optional.of(first.with(
                            nth == LAST
                                    ? TemporalAdjusters.lastInMonth(weekday)
                                    : TemporalAdjusters.dayOfWeekInMonth(nth, weekday))
                    .plusDays(after));
        }
    }

    /** Days after Easter Sunday, before it below zero. */
    public record FromEaster(int days) implements Rule {
        @Override
        public Optional<LocalDate> in(int year) {
            return Optional.of(easter(year).plusDays(days));
        }

        /**
         * Easter of the Gregorian calendar by the rule of Meeus, Jones and Butcher (from memory; years held by a
         * test).
         */
        private static LocalDate easter(int year) {
            int a = year % 19;
            int b = year / 100;
            int c = year % 100;
            int d = b / 4;
            int e = b % 4;
            int g = (8 * b + 13) / 25;
            int h = (19 * a + b - d - g + 15) % 30;
            int i = c / 4;
            int k = c % 4;
            int l = (32 + 2 * e + 2 * i - h - k) % 7;
            int m = (a + 11 * h + 22 * l) / 451;
            int month = (h + l - 7 * m + 114) / 31;
            int day = (h + l - 7 * m + 114) % 31 + 1;
            return LocalDate.of(year, month, day);
        }
    }

    /**
     * Whether a day is this holiday, or the day on which it is observed: Friday for a Saturday, Monday for a Sunday.
     * Both
     * are left out, which never shortens the buyer's right.
     */
    boolean isOn(LocalDate day) {
        for (int year = day.getYear(); year <= day.getYear() + 1; year++) {
            Optional<LocalDate> date = rule.in(year);
            if (date.filter(one -> one.equals(day) || observed(one).equals(day)).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static LocalDate observed(LocalDate date) {
        return switch (date.getDayOfWeek()) {
            case SATURDAY -> date.minusDays(1);
            case SUNDAY -> date.plusDays(1);
            default -> date;
        };
    }
}
