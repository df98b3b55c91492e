// SPDX-License-Identifier: Apache-2.0
package spadework.office.billing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.billing.Ledger;
import spadework.finding.Finding;
import spadework.intake.Intake;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.HomeownerPapers;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.Refusal;
import spadework.office.agreement.RegisteredFiles;
import spadework.office.agreement.Signatures;
import spadework.office.records.BilledRecord;
import spadework.office.records.JobRecords;
import spadework.paperwork.Dossier;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Guard;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.register.SealMark;
import spadework.wording.Wording;

/**
 * A job whose contract is signed, with its account.
 *
 * @param file the job file
 * @param contract the line of the register that signs the contract
 */
record SignedAccount(Office office, Path file, Bid bid, JobRecords records, Entry contract, Ledger ledger) {
    private static final Wording WORDS = Wording.beside(SignedAccount.class);

    /** A signed account, or why there is none. */
    sealed interface Reading {
        record Read(SignedAccount account) implements Reading {}

        record Unread(Outcome outcome) implements Reading {}
    }

    /**
     * Reads the account of a job.
     *
     * @param on the day of what is to be written
     * @param today nothing can have been done later
     * @param done what is to be written was on that day, as {@code received}
     */
    static Reading read(Office office, Path job, LocalDate on, LocalDate today, String done) throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.bid(job);
        if (answer instanceof Refusal refusal) {
            return new Reading.Unread(new Outcome.Faulty(refusal.faults()));
        }
        Bid bid = (Bid) answer;
        JobRecords records = JobRecords.beside(file);
        if (records.contract().isEmpty()) {
            return refused(List.of(WORDS.get("signed-account.no-contract-signed-money")));
        }
        BilledRecord billed = billed(records, bid);
        List<String> reasons = new ArrayList<>(records.stopped());
        reasons.addAll(Signatures.future(on, today, done));
        billed.differences().forEach(finding -> reasons.add(office.described(finding)));
        return reasons.isEmpty()
                ? new Reading.Read(new SignedAccount(
                        office, file, bid, records, records.contract().get(), billed.ledger()))
                : refused(reasons);
    }

    private static Reading refused(List<String> reasons) {
        return new Reading.Unread(new Outcome.Refused(reasons));
    }

    private static BilledRecord billed(JobRecords records, Bid bid) {
        return BilledRecord.of(
                records,
                bid.dossier().contract(),
                bid.dossier().job().agreement().received());
    }

    Register register() {
        return Register.of(records.folder());
    }

    /** All that a paper of that template is made from, in its words. */
    Dossier dossier(String template) {
        return HomeownerPapers.words(bid.dossier(), template);
    }

    /** Number of the contract. */
    String contractNumber() {
        return contract.number().orElseThrow().text();
    }

    String job() {
        return bid.dossier().job().number();
    }

    /** The day of the contract. */
    LocalDate signed() {
        return contract.on();
    }

    Outcome refused(Iterable<Finding> findings) {
        List<String> reasons = new ArrayList<>();
        findings.forEach(finding -> reasons.add(office.described(finding)));
        return new Outcome.Refused(reasons);
    }

    /** What two programs at once must not both do, looked at on the account as it is when nobody else can write. */
    Guard guard(Looking looking) {
        return entries -> {
            Ledger now = billed(new JobRecords(records.folder(), entries), bid).ledger();
            List<Finding> found = looking.at(now);
            if (!found.isEmpty()) {
                throw new IllegalStateException(office.described(found.get(0)));
            }
        };
    }

    /** Looks at an account. */
    @FunctionalInterface
    interface Looking {
        List<Finding> at(Ledger ledger);
    }

    /** Papers for the homeowner under a number, with what the register keeps of them. */
    Issue issue(DocumentNumber number, SealMark mark, Paper paper) {
        try {
            return Issue.of(
                    RegisteredFiles.named(
                            number, office.issuedApart(bid, paper.template(), paper.model(), paper.on(), mark)),
                    paper.facts());
        } catch (IOException unusable) {
            throw new UncheckedIOException(unusable);
        }
    }

    /** What is printed, and what the register keeps of it. */
    record Paper(String template, Map<String, Object> model, LocalDate on, Map<String, String> facts) {}

    Outcome issued(Entry entry) {
        return new Outcome.Issued(entry.number().orElseThrow().text(), RegisteredFiles.paths(records.folder(), entry));
    }
}
