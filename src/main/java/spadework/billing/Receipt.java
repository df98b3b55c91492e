// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import java.time.LocalDate;
import spadework.money.Dollars;

/**
 * Money that came in, as it was receipted.
 *
 * @param number as it is printed, {@code 2026-014-R1}
 * @param how by what means, as "check 1041"
 */
public record Receipt(String number, LocalDate on, Dollars amount, String how) {}
