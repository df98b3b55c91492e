// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.billing.Ledger;
import spadework.billing.Release;
import spadework.intake.law.StateRuleBook;
import spadework.law.StateRules;
import spadework.law.release.ReleaseForm;
import spadework.law.release.ReleaseKind;
import spadework.office.PaperBlocks;
import spadework.office.records.BilledRecord;
import spadework.office.records.JobRecords;
import spadework.paperwork.Dossier;
import spadework.paperwork.billing.InvoicePaper;
import spadework.paperwork.billing.ReceiptPaper;
import spadework.paperwork.billing.ReleasePaper;
import spadework.paperwork.billing.ReleaseSheet;
import spadework.paperwork.billing.StatementPaper;
import spadework.press.page.PageInfo;

/** The papers about money of the sample that was signed and closed, at every turn of its account. */
public final class MoneyPapers {
    static final Path SAMPLE = Path.of("sample-quotes/added-wall-then-closed");
    private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
    private static final String CONTRACT = "2026-041-A1";

    private MoneyPapers() {}

    /** A paper ready for the press. */
    public record Paper(String name, String template, Map<String, Object> model) {}

    /** Every one of them. */
    public static List<Paper> all() throws IOException {
        return all(Samples.bid(SAMPLE).dossier());
    }

    /** Every one of them from that dossier of the sample. */
    public static List<Paper> all(Dossier dossier) throws IOException {
        Ledger whole = BilledRecord.of(
                        JobRecords.beside(SAMPLE.resolve("job.json")),
                        dossier.contract(),
                        dossier.job().agreement().received())
                .ledger();
        Ledger behind =
                new Ledger(whole.contract(), whole.invoices(), whole.receipts().subList(0, 2));
        List<Paper> papers = new ArrayList<>();
        papers.add(new Paper("invoice", "invoice", Map.of("invoice", InvoicePaper.of(dossier, CONTRACT, behind))));
        papers.add(new Paper(
                "receipt",
                "receipt",
                Map.of(
                        "receipt",
                        ReceiptPaper.of(
                                dossier, CONTRACT, behind, behind.receipts().get(1)))));
        papers.add(new Paper("statement", "statement", statement(dossier, "", whole)));
        papers.add(new Paper("statement with open bills", "statement", statement(dossier, "", behind)));
        papers.add(new Paper(
                "statement before any bill",
                "statement",
                statement(dossier, "", new Ledger(whole.contract(), List.of(), List.of()))));
        papers.add(new Paper("late notice", "late-notice", statement(dossier, "2026-041-N1", behind)));
        papers.add(release("progress, paid", dossier, whole, 1));
        papers.add(release("progress, open", dossier, behind, 2));
        papers.add(release("final, paid", dossier, whole, 4));
        papers.add(release("final, open", dossier, behind, 4));
        papers.add(prescribed(dossier, behind));
        return papers;
    }

    private static Map<String, Object> statement(Dossier dossier, String number, Ledger ledger) {
        return Map.of("statement", StatementPaper.of(dossier, number, CONTRACT, ledger, DAY));
    }

    private static Paper release(String name, Dossier dossier, Ledger ledger, int bill) {
        Release release = Release.of(ledger, ledger.invoices().get(bill), true);
        return new Paper(
                "release, " + name,
                "release",
                Map.of("release", ReleasePaper.of(dossier, "2026-041-L1", CONTRACT, release, DAY)));
    }

    /** The same in the words of California, of which one form is carried. */
    private static Paper prescribed(Dossier dossier, Ledger ledger) {
        Release release = Release.of(ledger, ledger.invoices().get(4), true);
        ReleaseForm form = california().release(ReleaseKind.CONDITIONAL_FINAL).orElseThrow();
        ReleaseSheet plain = ReleasePaper.of(dossier, "2026-041-L1", CONTRACT, release, DAY);
        return new Paper(
                "release, prescribed",
                "release",
                Map.of(
                        "release",
                        new ReleaseSheet(
                                plain.head(),
                                plain.number(),
                                plain.kind(),
                                plain.contract(),
                                plain.invoice(),
                                plain.through(),
                                plain.amount(),
                                plain.changes(),
                                form.wording().orElseThrow(),
                                form.citation())));
    }

    /** The bundled rules of California. */
    static StateRules california() {
        return StateRuleBook.bundled().find("CA").orElseThrow();
    }

    /** What each says, block by block; prescribed words aside. */
    public static Map<String, List<String>> blocks() throws IOException {
        Map<String, List<String>> blocks = new LinkedHashMap<>();
        for (Paper paper : all()) {
            blocks.put(paper.name(), PaperBlocks.of(paper.template(), paper.model(), info()));
        }
        return blocks;
    }

    static PageInfo info() {
        return new PageInfo("en-US", "Fennimarsh Wall & Drain LLC", DAY);
    }

    static LocalDate day() {
        return DAY;
    }
}
