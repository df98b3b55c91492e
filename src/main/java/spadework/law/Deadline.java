// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.time.LocalDate;

/**
 * The last day of a right to cancel under one rule. It ends at midnight.
 *
 * @param rule whose rule it is, as {@code US-FTC} or {@code MD}
 * @param from the day that is not counted any more: signing, or receipt of the copy
 * @param status how far the rule was read
 */
public record Deadline(
        String rule, LocalDate from, int days, DayCount count, LocalDate last, String citation, String status) {}
