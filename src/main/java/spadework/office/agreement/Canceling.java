// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.intake.Intake;
import spadework.job.Job;
import spadework.job.Owners;
import spadework.job.Signing;
import spadework.law.Cancellation;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.HomeownerPapers;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.Refusal;
import spadework.office.records.BilledRecord;
import spadework.office.records.JobRecords;
import spadework.paperwork.Dossier;
import spadework.paperwork.contract.CancellationPaper;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.register.SealMark;
import spadework.wording.Wording;

/**
 * Records that a buyer canceled the contract: the refund day is worked out, the acknowledgment is printed, and no step
 * follows on the contract any more.
 */
public final class Canceling {
    private static final Wording WORDS = Wording.beside(Canceling.class);

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; nothing can have come in later */
    public Canceling(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /**
     * A notice as it is recorded.
     *
     * @param by who gave it
     * @param sent when it was mailed or handed over; the day it came where it is left out
     * @param received the day it came
     * @param file the notice, named from the job's folder
     * @param released why the buyer is let go although the right had ended
     */
    public record NoticeInput(
            List<String> by,
            Optional<LocalDate> sent,
            LocalDate received,
            Optional<String> file,
            Optional<String> released) {

        public NoticeInput {
            by = List.copyOf(by);
        }

        private LocalDate sentOn() {
            return sent.orElse(received);
        }
    }

    /**
     * Records a notice of cancellation.
     *
     * @throws IOException if a file cannot be read or written
     */
    public Outcome cancel(Path job, NoticeInput notice) throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.readAndBid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        JobRecords records = JobRecords.beside(file);
        Optional<Entry> before = records.canceled();
        if (before.isPresent()) {
            Entry entry = before.get();
            String number = entry.number().orElseThrow().text();
            return new RepeatedStep(number)
                    .fact(
                            "the day it came",
                            entry.on().toString(),
                            notice.received().toString())
                    .fact(
                            "the day it was sent",
                            entry.fact("sent").orElse(""),
                            notice.sentOn().toString())
                    .fact("who gave notice", entry.fact("by").orElse(""), String.join("; ", notice.by()))
                    .refusal()
                    .orElse(new Outcome.Standing(number));
        }
        List<String> reasons = reasons(file, bid, records, notice);
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        Entry contract = records.contract().orElseThrow();
        Entry entry = Register.of(records.folder())
                .issue(
                        DocumentKind.CANCELLATION,
                        Event.CONTRACT_CANCELED,
                        bid.dossier().job().number(),
                        notice.received(),
                        OnceGuard.of(Event.CONTRACT_CANCELED),
                        (number, mark) -> issue(file, number, mark, new Recorded(bid, contract, notice)));
        return new Outcome.Issued(entry.number().orElseThrow().text(), RegisteredFiles.paths(records.folder(), entry));
    }

    private List<String> reasons(Path file, Bid bid, JobRecords records, NoticeInput notice) {
        if (records.contract().isEmpty()) {
            return List.of(WORDS.get("canceling.no-contract-signed-so"));
        }
        List<String> reasons = new ArrayList<>(Signatures.future(notice.received(), today, "received"));
        bid.openStops().stream()
                .filter(stop -> stop.id().equals(BilledRecord.NOT_IN_JOB))
                .forEach(stop -> reasons.add(office.described(stop)));
        Job job = bid.dossier().job();
        LocalDate signed = records.contract().get().on();
        if (records.certificate().isPresent()) {
            reasons.add(WORDS.get("canceling.job-closed-and-its"));
        }
        List<String> strangers = Owners.strangers(job, notice.by());
        if (notice.by().isEmpty() || !strangers.isEmpty()) {
            reasons.add((strangers.isEmpty() ? "Nobody is named" : String.join(" and ", strangers) + " is no buyer")
                    + ". Notice is given by one of " + String.join(", ", Owners.allowed(job))
                    + "; on the command line: --by NAME");
        }
        if (notice.sentOn().isAfter(notice.received())) {
            reasons.add(WORDS.get("canceling.notice-sent-on", notice.sentOn(), notice.received()));
        }
        if (notice.sentOn().isBefore(signed)) {
            reasons.add(WORDS.get("canceling.contract-signed-on", signed, notice.sentOn()));
        }
        LocalDate last = CancellationPaper.lastDay(bid.contracted()).orElse(signed);
        boolean waived = job.agreement()
                .signing()
                .map(Signing::sale)
                .filter(sale -> sale.isWaived())
                .isPresent();
        if (notice.released().isEmpty() && waived) {
            reasons.add(WORDS.get("canceling.buyer-gave-right-to"));
        } else if (notice.released().isEmpty() && notice.sentOn().isAfter(last)) {
            reasons.add(WORDS.get("canceling.the-notice-was-sent-on", notice.sentOn(), last));
        }
        notice.file().flatMap(name -> Signatures.unkept(file, name)).ifPresent(reasons::add);
        return reasons;
    }

    /** A notice with the contract that it cancels. */
    private record Recorded(Bid bid, Entry contract, NoticeInput notice) {}

    private Issue issue(Path file, DocumentNumber number, SealMark mark, Recorded recorded) {
        try {
            Bid bid = recorded.bid();
            Entry contract = recorded.contract();
            NoticeInput notice = recorded.notice();
            Dossier dossier = bid.contracted();
            CancellationPaper.Notice came =
                    new CancellationPaper.Notice(notice.by(), notice.sentOn(), notice.received(), notice.released());
            Map<String, byte[]> papers = RegisteredFiles.named(
                    number,
                    office.acknowledgment(
                            bid,
                            CancellationPaper.of(
                                    HomeownerPapers.words(dossier, "cancellation"),
                                    contract.number().orElseThrow().text(),
                                    came),
                            notice.received(),
                            mark));
            Map<String, byte[]> files = new LinkedHashMap<>();
            Signatures.keep(
                    files,
                    number.text() + "-notice",
                    file,
                    new SignatureInput(
                            notice.received(), notice.by(), notice.file(), Optional.empty(), ConsentInput.NONE));
            Map<String, String> facts = new LinkedHashMap<>();
            facts.put("contract", contract.number().orElseThrow().text());
            facts.put("by", String.join("; ", notice.by()));
            facts.put("sent", notice.sentOn().toString());
            facts.put(
                    "lastDay", CancellationPaper.lastDay(dossier).orElseThrow().toString());
            facts.put("refundBy", Cancellation.refundBy(notice.received()).toString());
            facts.put("refund", CancellationPaper.refund(dossier).plain());
            notice.released().ifPresent(why -> facts.put("released", why));
            return Issue.of(papers, files, facts);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
