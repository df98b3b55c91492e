// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import spadework.billing.Ledger;
import spadework.billing.Receipt;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.PaperHeads;

/** Puts a receipt together. */
public final class ReceiptPaper {
    private ReceiptPaper() {}

    /**
     * A receipt.
     *
     * @param contract number of the contract
     * @param ledger the account, this receipt in it
     */
    public static ReceiptSheet of(Dossier dossier, String contract, Ledger ledger, Receipt receipt) {
        return new ReceiptSheet(
                PaperHeads.of(dossier, receipt.on()),
                receipt.number(),
                contract,
                dossier.terms().day(receipt.on()),
                receipt.amount(),
                receipt.how(),
                ledger.coveredBy(receipt).stream()
                        .map(paid -> new ReceiptSheet.PaidBill(paid.invoice().number(), paid.amount()))
                        .toList(),
                AccountTotals.of(ledger));
    }
}
