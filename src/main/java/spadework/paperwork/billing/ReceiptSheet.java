// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;

/**
 * Everything that a receipt prints, finished.
 *
 * @param on the day on which the money came, in words
 * @param how by what means
 * @param totals the account with it
 */
public record ReceiptSheet(
        PaperHead head, String number, String contract, String on, Dollars amount, String how, AccountTotals totals) {}
