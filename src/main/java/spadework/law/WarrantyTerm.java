// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.time.LocalDate;

/** The last day of a term. */
public final class WarrantyTerm {
    private WarrantyTerm() {}

    /**
     * The day before the same date so many years on. A term that starts on 29 February ends on 28 February where the
     * last year has no 29th, which is the longer reading and the homeowner's.
     *
     * @param years 1 to 99
     */
    public static LocalDate lastDay(LocalDate start, int years) {
        LocalDate anniversary = start.plusYears(years);
        boolean leapDayLost = start.getDayOfMonth() != anniversary.getDayOfMonth();
        return leapDayLost ? anniversary : anniversary.minusDays(1);
    }
}
