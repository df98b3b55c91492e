// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;

/**
 * A warranted part with its term.
 *
 * @param part what it is, as "Footing drain"
 * @param promise what it will do
 * @param years the length of the term, 1 to 99
 * @param firstDay the day the term begins
 * @param lastDay the day at whose end the term ends
 */
public record CoveredPart(String part, String promise, int years, LocalDate firstDay, LocalDate lastDay) {

    public CoveredPart {
        if (lastDay.isBefore(firstDay)) {
            throw new IllegalArgumentException(part + " ends on " + lastDay + ", before it begins on " + firstDay);
        }
    }

    /** Whether the term runs on a day, first and last day included. */
    public boolean isInForce(LocalDate on) {
        return !on.isBefore(firstDay) && !on.isAfter(lastDay);
    }
}
