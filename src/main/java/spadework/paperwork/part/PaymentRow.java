// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.math.BigDecimal;
import spadework.money.Dollars;

/**
 * A payment.
 *
 * @param fraction its share as a decimal fraction
 * @param last true for the one that takes the odd cent
 */
public record PaymentRow(int number, String when, String share, BigDecimal fraction, boolean last, Dollars amount) {}
