// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import spadework.money.Dollars;

/**
 * A payment that came in.
 *
 * @param how by what means and for what, as "check 1041, first payment"
 */
public record Received(LocalDate on, Dollars amount, String how) {}
