// SPDX-License-Identifier: Apache-2.0
package spadework.office.billing;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.billing.BillItem;
import spadework.billing.BillLine;
import spadework.billing.BillingChecks;
import spadework.billing.Invoice;
import spadework.billing.Ledger;
import spadework.finding.Finding;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.records.BilledRecord;
import spadework.paperwork.billing.InvoicePaper;
import spadework.register.DocumentKind;
import spadework.register.Entry;

/** Bills a payment of the contract once what it waits for is done, or an accepted change order. */
public final class Invoicing {
    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; nothing can have been done later */
    public Invoicing(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /**
     * Issues an invoice.
     *
     * @param on the day on which what it is for was done, from which it is due
     * @throws IOException if a file cannot be read or written
     */
    public Outcome invoice(Path job, BillItem item, LocalDate on) throws IOException {
        SignedAccount.Reading reading = SignedAccount.read(office, job, on, today, "done");
        if (reading instanceof SignedAccount.Reading.Unread unread) {
            return unread.outcome();
        }
        SignedAccount account = ((SignedAccount.Reading.Read) reading).account();
        Optional<Invoice> before = account.ledger().invoices().stream()
                .filter(invoice -> invoice.isFor(item) && invoice.on().equals(on))
                .findFirst();
        if (before.isPresent()) {
            return new Outcome.Standing(before.get().number());
        }
        List<Finding> found = BillingChecks.bill(account.ledger(), item, on, account.signed());
        if (!found.isEmpty()) {
            return account.refused(found);
        }
        List<BillLine> lines = account.ledger().lines(item);
        Entry entry = account.register()
                .issue(
                        DocumentKind.INVOICE,
                        DocumentKind.INVOICE.issued(),
                        account.job(),
                        on,
                        account.guard(now -> BillingChecks.bill(now, item, on, account.signed())),
                        (number, mark) ->
                                account.issue(number, mark, paper(account, new Invoice(number.text(), on, lines))));
        return account.issued(entry);
    }

    private static SignedAccount.Paper paper(SignedAccount account, Invoice invoice) {
        Ledger before = account.ledger();
        List<Invoice> invoices = new ArrayList<>(before.invoices());
        invoices.add(invoice);
        Ledger after = new Ledger(before.contract(), invoices, before.receipts());
        return new SignedAccount.Paper(
                "invoice",
                Map.of("invoice", InvoicePaper.of(account.dossier("invoice"), account.contractNumber(), after)),
                invoice.on(),
                BilledRecord.facts(invoice.lines()));
    }
}
