// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;

/**
 * Everything that a receipt prints, finished.
 *
 * @param on the day on which the money came, in words
 * @param how by what means
 * @param pays the bills that this money covers, and how much of each
 * @param totals the account with it
 */
public record ReceiptSheet(
        PaperHead head,
        String number,
        String contract,
        String on,
        Dollars amount,
        String how,
        List<PaidBill> pays,
        AccountTotals totals) {

    public ReceiptSheet {
        pays = List.copyOf(pays);
    }

    /**
     * A bill that this money goes to.
     *
     * @param amount how much of it
     */
    public record PaidBill(String number, Dollars amount) {}
}
