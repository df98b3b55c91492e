// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.List;
import java.util.Optional;

/**
 * A state's right to cancel a contract that was signed at home.
 *
 * @param days business days
 * @param seniorDays days for a buyer of {@code seniorAge} or older, where there are more
 * @param seniorAge the buyer's age from which on they are more; each state's stands in {@code state-rules.json}
 * @param count how the state counts; empty where that was not read
 * @param status how far the rule was read: {@code R}, {@code RX} excerpt, {@code RS} secondary source, {@code M} memory
 * @param disasterDays days for a repair of damage by a declared disaster, where there are more
 * @param fromReceipt whether the days start when the buyer receives the signed copy, not at signing
 * @param holidays days of the state that do not count beside Sundays and federal holidays
 * @param citation where this rule stands; empty where only the citations of the whole state are known
 */
public record CancelRule(
        int days,
        Optional<Integer> seniorDays,
        Optional<Integer> seniorAge,
        Optional<DayCount> count,
        String status,
        Optional<Integer> disasterDays,
        boolean fromReceipt,
        List<StateHoliday> holidays,
        Optional<String> citation) {

    public CancelRule {
        holidays = List.copyOf(holidays);
    }

    /** The days that a buyer of that age has. */
    public int daysFor(int age) {
        return seniorAge.filter(from -> age >= from).flatMap(from -> seniorDays).orElse(days);
    }

    /** The days that a buyer has whose age is not known: it counts as the older one. */
    public int daysForUnknownAge() {
        return seniorAge.flatMap(from -> seniorDays).orElse(days);
    }

    /** The days after a declared disaster, where there are more than those by age. */
    public int daysAfterDisaster(int otherwise) {
        return Math.max(otherwise, disasterDays.orElse(otherwise));
    }

    /** How it is counted: as the state says, else by weekdays, which never ends too early. */
    public DayCount counted() {
        return count.orElse(DayCount.MONDAY_TO_FRIDAY);
    }
}
