// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;

/**
 * Everything that an invoice prints, finished. Days are in words.
 *
 * @param payments how many the contract has
 * @param totals the account with this one
 * @param payTo how to pay, line by line, as the company says
 */
public record InvoiceSheet(
        PaperHead head,
        String number,
        String contract,
        String due,
        int payments,
        List<BillRow> rows,
        Dollars amount,
        AccountTotals totals,
        List<String> payTo) {

    public InvoiceSheet {
        rows = List.copyOf(rows);
        payTo = List.copyOf(payTo);
    }

    /** What goes back: zero unless the bill is a credit. */
    public Dollars credit() {
        return amount.isNegative() ? Dollars.ZERO.minus(amount) : Dollars.ZERO;
    }

    /** Whether earlier bills are still open beside this one. */
    public boolean isBehind() {
        return amount.isLessThan(totals.open());
    }
}
