// SPDX-License-Identifier: Apache-2.0
package spadework.office.billing;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.billing.BillingChecks;
import spadework.billing.Ledger;
import spadework.billing.Receipt;
import spadework.disk.ChangedElsewhere;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.Draft;
import spadework.finding.Finding;
import spadework.money.Dollars;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.agreement.JobText;
import spadework.office.records.BilledRecord;
import spadework.paperwork.billing.ReceiptPaper;
import spadework.register.DocumentKind;
import spadework.register.Entry;

/** Records money that came in and gives a receipt for it; the job file has it under {@code received}. */
public final class Receiving {
    private static final String PLACE = "/received";

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; nothing can have come later */
    public Receiving(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /**
     * Receipts a payment. A row of the job file that says the same is the same money.
     *
     * @param amount above zero, and no more than what is billed and open
     * @param how by what means, as "check 1041"
     * @throws IOException if a file cannot be read or written
     */
    public Outcome receive(Path job, Dollars amount, LocalDate on, String how) throws IOException {
        SignedAccount.Reading reading = SignedAccount.read(office, job, on, today, "received");
        if (reading instanceof SignedAccount.Reading.Unread unread) {
            return unread.outcome();
        }
        SignedAccount account = ((SignedAccount.Reading.Read) reading).account();
        Receipt came = new Receipt("", on, amount, how);
        Optional<Receipt> before = account.ledger().receipts().stream()
                .filter(receipt -> isSame(receipt, came) && !receipt.number().isEmpty())
                .findFirst();
        if (before.isPresent()) {
            write(account.file(), came);
            return new Outcome.Standing(before.get().number());
        }
        List<Finding> found = checked(account.ledger(), came, account.signed());
        if (!found.isEmpty()) {
            return account.refused(found);
        }
        Entry entry = account.register()
                .issue(
                        DocumentKind.RECEIPT,
                        DocumentKind.RECEIPT.issued(),
                        account.job(),
                        on,
                        account.guard(now -> checked(now, came, account.signed())),
                        (number, mark) -> account.issue(
                                number, mark, paper(account, new Receipt(number.text(), on, amount, how))));
        write(account.file(), came);
        return account.issued(entry);
    }

    private static boolean isSame(Receipt one, Receipt other) {
        return one.on().equals(other.on())
                && one.amount().equals(other.amount())
                && one.how().equals(other.how());
    }

    /** The account without the row of the job file that tells this very money. */
    private static Ledger without(Ledger ledger, Receipt came) {
        List<Receipt> others = new ArrayList<>(ledger.receipts());
        ledger.receipts().stream()
                .filter(receipt -> receipt.number().isEmpty() && isSame(receipt, came))
                .findFirst()
                .ifPresent(others::remove);
        return new Ledger(ledger.contract(), ledger.invoices(), others);
    }

    private static List<Finding> checked(Ledger ledger, Receipt came, LocalDate signed) {
        return BillingChecks.receipt(without(ledger, came), came.amount(), came.on(), signed);
    }

    private static SignedAccount.Paper paper(SignedAccount account, Receipt receipt) {
        Ledger before = without(account.ledger(), receipt);
        List<Receipt> receipts = new ArrayList<>(before.receipts());
        receipts.add(receipt);
        Ledger after = new Ledger(before.contract(), before.invoices(), receipts);
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put(BilledRecord.AMOUNT, receipt.amount().plain());
        facts.put(BilledRecord.HOW, receipt.how());
        return new SignedAccount.Paper(
                "receipt",
                Map.of(
                        "receipt",
                        ReceiptPaper.of(account.dossier("receipt"), account.contractNumber(), after, receipt)),
                receipt.on(),
                facts);
    }

    /** Puts the payment into the job file as it is now, unless it stands there. */
    private static void write(Path file, Receipt came) throws IOException {
        SharedFile.alone(file, () -> {
            Snapshot now = Snapshot.of(file);
            Draft draft = now.text()
                    .flatMap(Draft::read)
                    .orElseThrow(() -> new ChangedElsewhere(file, now, "it is no JSON object any more"));
            int rows = draft.rows(PLACE);
            for (int row = 0; row < rows; row++) {
                String place = PLACE + "/" + row;
                if (draft.shown(place + "/on").equals(came.on().toString())
                        && draft.shown(place + "/amount").equals(came.amount().text())
                        && draft.shown(place + "/how").equals(came.how())) {
                    return false;
                }
            }
            String place = PLACE + "/" + rows;
            JobText text = new JobText(draft)
                    .with(place + "/on", came.on().toString())
                    .with(place + "/amount", came.amount().text())
                    .with(place + "/how", came.how());
            SharedFile.replace(file, now, text.text().getBytes(java.nio.charset.StandardCharsets.UTF_8));
            return true;
        });
    }
}
