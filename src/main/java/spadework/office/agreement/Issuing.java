// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.contract.IssueDifference;
import spadework.contract.Revision;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.intake.Intake;
import spadework.job.Job;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.Refusal;
import spadework.office.files.FileName;
import spadework.office.files.JobNumbers;
import spadework.office.records.JobRecords;
import spadework.office.records.JobSource;
import spadework.paperwork.Dossier;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.register.SealMark;
import spadework.wording.Wording;

/** Issues a proposal: it gets a number and a revision, and its source is kept. */
public final class Issuing {
    private static final Wording WORDS = Wording.beside(Issuing.class);

    static final String FINGERPRINT = "fingerprint";

    private static final EnumSet<PaperKind> PAPERS = EnumSet.of(PaperKind.PROPOSAL, PaperKind.WARRANTY);

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; nothing can have been issued later */
    public Issuing(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /** Somebody else issued the same job while this one was being made ready. */
    private static final class IssuedMeanwhile extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        private IssuedMeanwhile(String number) {
            super(number + " was issued of the same job in the meantime");
        }
    }

    /**
     * Issues the proposal of a job with the specimen of its warranty, as the next revision. A job in which nothing has
     * changed since the last one is not issued again.
     *
     * @throws IOException if a file cannot be read or written
     */
    public Outcome issue(Path job) throws IOException {
        Path file = Intake.fileOf(job);
        Optional<Fault> taken = JobNumbers.taken(job);
        if (taken.isPresent()) {
            return new Outcome.Faulty(List.of(taken.get()));
        }
        // The paper is priced by the very books that are kept with it.
        office.readBooksAgain();
        BidResult answer = office.readAndBid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        JobRecords records = JobRecords.beside(file);
        if (records.canceled().isPresent()) {
            return new Outcome.Refused(records.stopped());
        }
        if (records.contract().isPresent()) {
            return new Outcome.Refused(List.of(WORDS.get("issuing.contract-signed-what-changes")));
        }
        List<Finding> stops = bid.openStops();
        if (!stops.isEmpty()) {
            return new Outcome.Stopped(stops.stream().map(office::described).toList());
        }
        Dossier dossier = bid.proposed();
        List<String> reasons = Signatures.future(dossier.job().issued(), today, "issued");
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        String fingerprint = Fingerprint.of(file, dossier.job(), office.templates());
        Optional<Entry> last = records.proposal();
        if (isIssued(records, fingerprint)) {
            return new Outcome.Standing(last.get().number().orElseThrow().text());
        }
        Optional<IssueDifference> moved =
                last.isPresent() ? moved(records, last.get(), file, dossier) : Optional.empty();
        try {
            Entry entry = Register.of(records.folder())
                    .issue(
                            DocumentKind.PROPOSAL,
                            DocumentKind.PROPOSAL.issued(),
                            dossier.job().number(),
                            dossier.job().issued(),
                            entries -> once(new JobRecords(records.folder(), entries), fingerprint),
                            (number, mark) ->
                                    issue(file, number, mark, new Revision(number.revision(), moved), fingerprint));
            return new Outcome.Issued(
                    entry.number().orElseThrow().text(), RegisteredFiles.paths(records.folder(), entry));
        } catch (IssuedMeanwhile other) {
            return new Outcome.Standing(JobRecords.beside(file)
                    .proposal()
                    .orElseThrow()
                    .number()
                    .orElseThrow()
                    .text());
        }
    }

    private static boolean isIssued(JobRecords records, String fingerprint) {
        return !records.isLost()
                && records.proposal()
                        .flatMap(entry -> entry.fact(FINGERPRINT))
                        .filter(fingerprint::equals)
                        .isPresent();
    }

    /** Of two programs that issue the same job at once, one gives the revision. */
    private static void once(JobRecords records, String fingerprint) {
        if (isIssued(records, fingerprint)) {
            throw new IssuedMeanwhile(
                    records.proposal().get().number().orElseThrow().text());
        }
    }

    private Issue issue(Path file, DocumentNumber number, SealMark mark, Revision revision, String fingerprint) {
        try {
            Bid bid = (Bid) office.bid(file, revision);
            Job job = bid.proposed().job();
            if (!Fingerprint.of(file, job, office.templates()).equals(fingerprint)) {
                throw new IllegalStateException(
                        "The job, the company, the price book or the templates changed while it was issued. Issue it"
                                + " again.");
            }
            Map<String, byte[]> papers = RegisteredFiles.named(number, office.issued(bid, PAPERS, mark));
            Map<String, byte[]> kept = Map.of(
                    FileName.safe(number.text()) + "-source.zip",
                    JobSource.of(
                                    file,
                                    Files.readString(file),
                                    job,
                                    bid.proposed().company(),
                                    office.templates())
                            .archive());
            Map<String, String> facts = new LinkedHashMap<>();
            facts.put("total", bid.proposedQuote().total().plain());
            facts.put("bookDate", bid.proposedQuote().bookDate().toString());
            facts.put("templates", Fingerprint.of(office.templates()));
            facts.put("validUntil", job.issued().plusDays(job.validDays()).toString());
            facts.put(FINGERPRINT, fingerprint);
            return Issue.of(papers, kept, facts);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What moved since an earlier issue, priced again from its own source, and why. */
    private static Optional<IssueDifference> moved(JobRecords records, Entry before, Path file, Dossier now)
            throws IOException {
        Optional<JobSource> source = records.source(before);
        if (source.isEmpty()) {
            return Optional.empty();
        }
        Optional<Dossier> then = proposed(source.get());
        if (then.isEmpty()) {
            return Optional.empty();
        }
        IssueDifference moved = IssueDifference.between(then.get().job().issued(), offer(then.get()), offer(now));
        Optional<JobSource> atPricesOfNow = source.get().atPricesBeside(file);
        Optional<Dossier> repriced = atPricesOfNow.isPresent() ? proposed(atPricesOfNow.get()) : then;
        return Optional.of(
                repriced.map(old -> moved.withRepriced(old.contract().proposed().total()))
                        .orElse(moved));
    }

    private static Optional<Dossier> proposed(JobSource source) throws IOException {
        try (SourceCheckout checkout = SourceCheckout.of(source)) {
            return checkout.office().readAndBid(checkout.job()) instanceof Bid bid
                    ? Optional.of(bid.proposed())
                    : Optional.empty();
        }
    }

    private static IssueDifference.IssuedOffer offer(Dossier dossier) {
        return new IssueDifference.IssuedOffer(
                dossier.contract().proposed(), dossier.contract().options(), dossier.takeoff());
    }
}
