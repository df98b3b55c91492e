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
import java.util.stream.Collectors;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.money.Dollars;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.files.FileName;
import spadework.paperwork.billing.AccountStatement;
import spadework.paperwork.billing.LateRow;
import spadework.paperwork.billing.StatementPaper;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.IssuedFolders;

/** The account of a job on paper: a statement, which nobody has to keep, and a late notice, which is registered. */
public final class Statements {
    private static final String STATEMENT = "statement";

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; no account is known for a later one */
    public Statements(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /**
     * Prints the statement of account.
     *
     * @param on the day; what came later is not in it
     * @param out the folder into which the job's papers go
     * @throws IOException if a file cannot be read or written
     */
    public Outcome statement(Path job, LocalDate on, Path out) throws IOException {
        SignedAccount.Reading reading = SignedAccount.read(office, job, on, today, "drawn up");
        if (reading instanceof SignedAccount.Reading.Unread unread) {
            return unread.outcome();
        }
        SignedAccount account = ((SignedAccount.Reading.Read) reading).account();
        Map<String, Object> model = Map.of(STATEMENT, described(account, "", on));
        Path folder = out.resolve(FileName.safe(account.job()));
        Disk.folders(folder);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> paper :
                office.printedApart(account.bid(), STATEMENT, model, on).entrySet()) {
            Path target = InsideFolder.writable(folder, IssuedFolders.HOMEOWNER + "/" + paper.getKey());
            Disk.folders(target.getParent());
            AtomicFile.write(target, paper.getValue());
            written.add(target);
        }
        return new Outcome.Printed(written);
    }

    /**
     * Issues a late notice for what was due before a day and is not paid.
     *
     * @throws IOException if a file cannot be read or written
     */
    public Outcome lateNotice(Path job, LocalDate on) throws IOException {
        SignedAccount.Reading reading = SignedAccount.read(office, job, on, today, "written");
        if (reading instanceof SignedAccount.Reading.Unread unread) {
            return unread.outcome();
        }
        SignedAccount account = ((SignedAccount.Reading.Read) reading).account();
        List<LateRow> late = described(account, "", on).late().stream()
                .filter(row -> row.days() > 0)
                .toList();
        if (late.isEmpty()) {
            return account.refused(List.of(new Finding(
                    "nothing-late",
                    Severity.MUST,
                    "",
                    Map.of("on", on.toString()),
                    "the bills and receipts of the register")));
        }
        Optional<Entry> before = account.records().all(Event.LATE_NOTICE_ISSUED).stream()
                .filter(entry -> entry.on().equals(on))
                .findFirst();
        if (before.isPresent()) {
            return new Outcome.Standing(before.get().number().orElseThrow().text());
        }
        Entry entry = account.register()
                .issue(
                        DocumentKind.LATE_NOTICE,
                        DocumentKind.LATE_NOTICE.issued(),
                        account.job(),
                        on,
                        account.guard(now -> List.of()),
                        (number, mark) -> account.issue(number, mark, notice(account, number, on, late)));
        return account.issued(entry);
    }

    private static SignedAccount.Paper notice(
            SignedAccount account, DocumentNumber number, LocalDate on, List<LateRow> late) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("late", late.stream().map(LateRow::number).collect(Collectors.joining("; ")));
        facts.put(
                "amount",
                Dollars.total(late.stream().map(LateRow::rest).toList()).plain());
        return new SignedAccount.Paper(
                "late-notice", Map.of(STATEMENT, described(account, number.text(), on)), on, facts);
    }

    private static AccountStatement described(SignedAccount account, String number, LocalDate on) {
        return StatementPaper.of(account.dossier("statement"), number, account.contractNumber(), account.ledger(), on);
    }
}
