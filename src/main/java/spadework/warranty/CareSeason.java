// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;

/** The two times of year when an owner looks after the house: the meteorological spring and fall (from memory). */
public enum CareSeason {
    SPRING(Month.MARCH, Month.MAY),
    FALL(Month.SEPTEMBER, Month.NOVEMBER);

    private final Month first;
    private final Month last;

    CareSeason(Month first, Month last) {
        this.first = first;
        this.last = last;
    }

    LocalDate firstDay(int year) {
        return LocalDate.of(year, first, 1);
    }

    LocalDate lastDay(int year) {
        return YearMonth.of(year, last).atEndOfMonth();
    }

    /** As a person says it. */
    public String words() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
