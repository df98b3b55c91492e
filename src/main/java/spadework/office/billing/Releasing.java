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
import java.util.TreeMap;
import spadework.billing.Invoice;
import spadework.billing.Ledger;
import spadework.billing.Release;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.paperwork.billing.ReleasePaper;
import spadework.register.DocumentKind;
import spadework.register.Entry;
import spadework.register.Event;

/**
 * Releases claims on the house for a bill: conditional while it is open or a check for it is on its way, unconditional
 * once it is paid.
 */
public final class Releasing {
    private static final String SOURCE = "the bills and receipts of the register";
    private static final String INVOICE = "invoice";
    private static final String KIND = "kind";

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken */
    public Releasing(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /**
     * Issues the release for a bill as the account stands.
     *
     * @param invoice number of the bill, whole or as {@code I2}
     * @param cleared whether the bank has paid every check that came in
     * @throws IOException if a file cannot be read or written
     */
    public Outcome release(Path job, String invoice, boolean cleared, LocalDate on) throws IOException {
        SignedAccount.Reading reading = SignedAccount.read(office, job, on, today, "signed");
        if (reading instanceof SignedAccount.Reading.Unread unread) {
            return unread.outcome();
        }
        SignedAccount account = ((SignedAccount.Reading.Read) reading).account();
        Optional<Invoice> bill = account.ledger().invoices().stream()
                .filter(one -> one.number().equals(invoice) || one.number().equals(account.job() + "-" + invoice))
                .findFirst();
        if (bill.isEmpty()) {
            return account.refused(List.of(finding("release-no-such-bill", invoice, Map.of())));
        }
        Release release = Release.of(account.ledger(), bill.get(), cleared);
        Optional<Entry> before = before(account, release);
        if (before.isPresent() && before.get().on().equals(on)) {
            return new Outcome.Standing(before.get().number().orElseThrow().text());
        }
        List<Finding> found = new ArrayList<>(account.bid()
                .dossier()
                .law()
                .state()
                .map(release::missing)
                .orElseGet(() -> List.of(Release.unread(state(account)))));
        before.ifPresent(entry -> found.add(twice(entry, release)));
        if (on.isBefore(release.through())) {
            found.add(finding(
                    "bill-before-last",
                    "",
                    Map.of("on", on.toString(), "first", release.through().toString())));
        }
        if (!found.isEmpty()) {
            return account.refused(found);
        }
        Entry entry = account.register()
                .issue(
                        DocumentKind.RELEASE,
                        DocumentKind.RELEASE.issued(),
                        account.job(),
                        on,
                        account.guard(now -> standing(now, release, cleared)),
                        (number, mark) -> account.issue(number, mark, paper(account, number.text(), release, on)));
        return account.issued(entry);
    }

    private static String state(SignedAccount account) {
        return account.bid().dossier().job().site().address().state();
    }

    private static Optional<Entry> before(SignedAccount account, Release release) {
        return account.records().all(Event.RELEASE_ISSUED).stream()
                .filter(entry -> entry.fact(INVOICE)
                                .filter(release.invoice().number()::equals)
                                .isPresent()
                        && entry.fact(KIND)
                                .filter(release.kind().words()::equals)
                                .isPresent())
                .findFirst();
    }

    /** Nothing came in or was billed meanwhile that makes it another release. */
    private static List<Finding> standing(Ledger now, Release release, boolean cleared) {
        return Release.of(now, release.invoice(), cleared).equals(release)
                ? List.of()
                : List.of(finding("release-moved", release.invoice().number(), Map.of()));
    }

    private static SignedAccount.Paper paper(SignedAccount account, String number, Release release, LocalDate on) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put(INVOICE, release.invoice().number());
        facts.put(KIND, release.kind().words());
        facts.put("amount", release.amount().plain());
        facts.put("through", release.through().toString());
        return new SignedAccount.Paper(
                "release",
                Map.of(
                        "release",
                        ReleasePaper.of(account.dossier("release"), number, account.contractNumber(), release, on)),
                on,
                facts);
    }

    private static Finding twice(Entry entry, Release release) {
        return finding(
                "release-twice",
                release.invoice().number(),
                Map.of(
                        "release", release.kind().words(),
                        "number", entry.number().orElseThrow().text(),
                        "on", entry.on().toString()));
    }

    private static Finding finding(String id, String about, Map<String, String> values) {
        return new Finding(id, Severity.MUST, about, new TreeMap<>(values), SOURCE);
    }
}
