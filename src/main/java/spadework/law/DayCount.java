// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import spadework.wording.Wording;

/** How a rule counts business days. Saturday is one under the federal rule. The day of signing is never counted. */
public enum DayCount {
    /** Every day but Sundays and federal holidays on their own day: 16 CFR 429.0(f) as it reads. */
    FEDERAL(false, false, EnumSet.allOf(FederalHoliday.class)),
    /** The same, leaving out the days on which holidays are observed as well: never shortens the buyer's right. */
    FEDERAL_AND_OBSERVED(false, true, EnumSet.allOf(FederalHoliday.class)),
    /** Monday to Friday, leaving out holidays and the days on which they are observed. */
    MONDAY_TO_FRIDAY(true, true, EnumSet.allOf(FederalHoliday.class)),
    /** Every day but Sundays and the nine holidays of Md. Com. Law 14-301(b), which lacks two of the federal ones. */
    MARYLAND(false, false, EnumSet.complementOf(EnumSet.of(FederalHoliday.KING_BIRTHDAY, FederalHoliday.JUNETEENTH)));

    private static final Wording WORDS = Wording.beside(DayCount.class);

    private final boolean saturdaysRest;
    private final boolean observed;
    private final Set<FederalHoliday> holidays;

    DayCount(boolean saturdaysRest, boolean observed, Set<FederalHoliday> holidays) {
        this.saturdaysRest = saturdaysRest;
        this.observed = observed;
        this.holidays = holidays;
    }

    /** Which days count, in words. */
    public String words() {
        return WORDS.get("day-count." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Whether the day counts. */
    public boolean counts(LocalDate day) {
        boolean restDay =
                day.getDayOfWeek() == DayOfWeek.SUNDAY || (saturdaysRest && day.getDayOfWeek() == DayOfWeek.SATURDAY);
        return !restDay && !isHoliday(day);
    }

    /**
     * The last day of a term that begins on the day after signing.
     *
     * @param days at least 1
     */
    public LocalDate lastDay(LocalDate signed, int days) {
        return lastDay(signed, days, List.of());
    }

    /**
     * The same where a state has holidays of its own.
     *
     * @param days at least 1
     */
    public LocalDate lastDay(LocalDate signed, int days, List<StateHoliday> more) {
        LocalDate day = signed;
        for (int counted = 0; counted < days; ) {
            day = day.plusDays(1);
            LocalDate looked = day;
            if (counts(day) && more.stream().noneMatch(holiday -> holiday.isOn(looked))) {
                counted++;
            }
        }
        return day;
    }

    /** A holiday of next year may be observed at the end of this one, so both years are looked at. */
    private boolean isHoliday(LocalDate day) {
        return Arrays.stream(FederalHoliday.values())
                .filter(holidays::contains)
                .anyMatch(holiday -> holiday.in(day.getYear()).equals(day)
                        || (observed
                                && (holiday.observedIn(day.getYear()).equals(day)
                                        || holiday.observedIn(day.getYear() + 1).equals(day))));
    }
}
