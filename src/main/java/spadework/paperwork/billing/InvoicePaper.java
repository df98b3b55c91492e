// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import spadework.billing.Invoice;
import spadework.billing.Ledger;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.PaperHeads;

/** Puts an invoice together. */
public final class InvoicePaper {
    private InvoicePaper() {}

    /**
     * The invoice that an account ends with.
     *
     * @param contract number of the contract
     * @throws IndexOutOfBoundsException if nothing is billed
     */
    public static InvoiceSheet of(Dossier dossier, String contract, Ledger ledger) {
        Invoice invoice = ledger.invoices().get(ledger.invoices().size() - 1);
        return new InvoiceSheet(
                PaperHeads.of(dossier, invoice.on()),
                invoice.number(),
                contract,
                dossier.terms().day(invoice.on()),
                ledger.lastPayment(),
                BillRows.of(dossier.terms(), ledger.contract(), invoice),
                invoice.amount(),
                AccountTotals.of(ledger),
                dossier.terms().own(dossier.company().letterhead().payTo()));
    }
}
