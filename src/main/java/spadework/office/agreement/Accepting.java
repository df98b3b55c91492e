// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.contract.Contract;
import spadework.contract.PricedOption;
import spadework.contract.SealedFigures;
import spadework.contract.Sum;
import spadework.intake.Intake;
import spadework.job.Job;
import spadework.job.Sale;
import spadework.job.Signing;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.Refusal;
import spadework.office.files.FileName;
import spadework.office.records.JobRecords;
import spadework.paperwork.contract.ContractNotices;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.register.SealMark;
import spadework.wording.Wording;

/**
 * Records the homeowner's yes to the proposal that was issued last: priced and printed from the source that was kept
 * with it, whatever company, books and templates say today.
 */
public final class Accepting {
    private static final Wording WORDS = Wording.beside(Accepting.class);

    private static final String PLACE = "/accepted";
    private static final String SIGNED_ON = "/signing/on";

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; nothing can have been signed later */
    public Accepting(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /** A yes as it comes in: the job file, what stands in it, and what was signed. */
    private record Yes(Path file, JobText text, Job job, List<String> taken, SignatureInput signed) {
        private String chosen() {
            return String.join(", ", taken.stream().sorted().toList());
        }
    }

    /**
     * Accepts the proposal that was issued last, once everybody who has to has signed.
     *
     * @param taken labels of the options that the homeowner takes; the others are declined
     * @throws IOException if a file cannot be read or written
     */
    public Outcome accept(Path job, List<String> taken, SignatureInput yes) throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.readAndBid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Job now = ((Bid) answer).proposed().job();
        JobRecords records = JobRecords.beside(file);
        Yes asked = new Yes(file, JobText.of(Files.readString(file)), now, taken, yes);
        if (records.contract().isPresent()) {
            return repeated(records, asked);
        }
        List<String> reasons = new ArrayList<>(Signatures.reasons(file, now, yes, today));
        if (records.proposal().isEmpty()) {
            reasons.add(WORDS.get("accepting.no-proposal-issued-homeowner"));
            return new Outcome.Refused(reasons);
        }
        if (records.isLost()) {
            reasons.add(WORDS.get("accepting.homeowner-declined-as-register"));
        }
        Optional<IssuedProposal> last = IssuedProposal.last(records);
        if (last.isEmpty()) {
            reasons.add(WORDS.get(
                    "accepting.source-missing",
                    records.proposal().get().number().orElseThrow()));
            return new Outcome.Refused(reasons);
        }
        if (!records.isSourceAsRegistered(records.proposal().get())) {
            reasons.add(WORDS.get(
                    "accepting.source-differs",
                    records.proposal().get().number().orElseThrow()));
            return new Outcome.Refused(reasons);
        }
        try (IssuedProposal issued = last.get()) {
            return accept(records, issued, asked, reasons);
        }
    }

    private Outcome accept(JobRecords records, IssuedProposal issued, Yes asked, List<String> reasons)
            throws IOException {
        issued.moved(asked.text(), asked.job())
                .ifPresent(moved -> reasons.add(WORDS.get("accepting.job-changed-since", issued.number(), moved)));
        JobText signing = issued.withSigning(asked.text())
                .with(SIGNED_ON, asked.signed().on().toString());
        reasons.addAll(days(issued, asked));
        reasons.addAll(options(asked));
        BidResult answer = issued.bid(signing);
        if (answer instanceof Refusal refusal) {
            return reasons.isEmpty() ? new Outcome.Faulty(refusal.faults()) : new Outcome.Refused(reasons);
        }
        Bid proposed = (Bid) answer;
        proposed.openStops().forEach(stop -> reasons.add(office.described(stop)));
        issued.otherwise(proposed).ifPresent(reasons::add);
        GatheredSignatures gathered =
                GatheredSignatures.on(records, issued.entry().number().orElseThrow());
        reasons.addAll(gathered.reasons(asked.signed(), asked.chosen()));
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        JobText accepted = accepted(signing, issued, proposed, asked, gathered.with(asked.signed()));
        BidResult after = issued.bid(accepted);
        if (after instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        List<String> draft = draft((Bid) after);
        if (!draft.isEmpty()) {
            return new Outcome.Refused(draft);
        }
        List<String> missing = gathered.missing(asked.job(), asked.signed());
        if (!missing.isEmpty()) {
            return gathered.add(records, asked.file(), asked.signed(), asked.chosen(), missing);
        }
        Entry entry = Register.of(records.folder())
                .issue(
                        DocumentKind.CONTRACT,
                        DocumentKind.CONTRACT.issued(),
                        asked.job().number(),
                        asked.signed().on(),
                        OnceGuard.of(DocumentKind.CONTRACT.issued()),
                        (number, mark) -> issue(number, mark, issued, accepted, (Bid) after, asked));
        accepted.write(asked.file(), List.of(PLACE, SIGNED_ON));
        return new Outcome.Issued(entry.number().orElseThrow().text(), RegisteredFiles.paths(records.folder(), entry));
    }

    /** The step was taken before; with the same facts it stands, or is finished where the program died on the way. */
    private static Outcome repeated(JobRecords records, Yes asked) throws IOException {
        if (!records.stopped().isEmpty()) {
            return new Outcome.Refused(records.stopped());
        }
        Entry contract = records.contract().orElseThrow();
        Optional<JobText> signed = InterruptedStep.kept(records, contract);
        if (signed.isPresent()) {
            List<String> by = signed.get().words(PLACE + "/by");
            Optional<Outcome> refusal = new RepeatedStep(
                            contract.number().orElseThrow().text())
                    .fact(
                            "the day of signing",
                            contract.on().toString(),
                            asked.signed().on().toString())
                    .fact(
                            "who signed",
                            RepeatedStep.among(by, asked.signed().by()),
                            String.join("; ", asked.signed().by()))
                    .fact(
                            "the options taken",
                            RepeatedStep.sorted(signed.get().words(PLACE + "/options")),
                            asked.chosen())
                    .refusal();
            if (refusal.isPresent()) {
                return refusal.get();
            }
        }
        return InterruptedStep.written(records, contract, asked.text(), List.of(PLACE, SIGNED_ON), asked.file());
    }

    private List<String> days(IssuedProposal issued, Yes asked) {
        List<String> reasons = new ArrayList<>();
        LocalDate on = asked.signed().on();
        LocalDate until = issued.validUntil(asked.job());
        if (on.isAfter(until)) {
            reasons.add(WORDS.get("accepting.price-held-until", until));
        }
        if (on.isBefore(issued.entry().on())) {
            reasons.add(issued.number() + " was issued on " + issued.entry().on() + ", after " + on
                    + ". Nobody signs a paper before it is there: correct the day of signing.");
        }
        Optional<LocalDate> dated =
                asked.job().agreement().signing().map(Signing::sale).flatMap(Sale::on);
        if (dated.filter(day -> !day.equals(on)).isPresent()) {
            reasons.add(WORDS.get("accepting.contract-dated", dated.get(), on, on));
        }
        return reasons;
    }

    private static List<String> options(Yes asked) {
        List<String> known = asked.job().agreement().options().stream()
                .map(option -> option.label())
                .toList();
        return asked.taken().stream()
                .filter(label -> !known.contains(label))
                .map(label -> WORDS.get("accepting.there-no-option", label, String.join(", ", known)))
                .toList();
    }

    /** Why nobody can sign the contract yet: the job does not know how it is signed, or something is missing in it. */
    private List<String> draft(Bid bid) {
        if (bid.contracted()
                .job()
                .agreement()
                .signing()
                .filter(Accepting::isPrepared)
                .isEmpty()) {
            return List.of(WORDS.get("accepting.no-contract-prepared-so"));
        }
        List<String> missing = ContractNotices.missing(bid.contracted()).stream()
                .map(office::described)
                .toList();
        if (missing.isEmpty()) {
            return List.of();
        }
        List<String> reasons = new ArrayList<>();
        reasons.add(WORDS.get("accepting.contract-draft-not-for"));
        reasons.addAll(missing);
        return reasons;
    }

    /** A block that holds nothing but the day says nothing of how it is signed. */
    private static boolean isPrepared(Signing signing) {
        Sale sale = signing.sale();
        return sale.salesperson().isPresent()
                || sale.oldestAge().isPresent()
                || signing.subcontractors().isPresent()
                || signing.permits().isPresent()
                || signing.dateIsEssential().isPresent();
    }

    private static JobText accepted(
            JobText text, IssuedProposal issued, Bid proposed, Yes asked, List<SignatureInput> signatures)
            throws IOException {
        Contract contract = proposed.proposed().contract();
        List<PricedOption> options = contract.options();
        Dollars price = contract.proposed()
                .total()
                .plus(Sum.of(options.stream()
                                .filter(option ->
                                        asked.taken().contains(option.option().label()))
                                .map(PricedOption::sum)
                                .toList())
                        .total());
        List<String> declined = options.stream()
                .map(option -> option.option().label())
                .filter(label -> !asked.taken().contains(label))
                .toList();
        return text.with(PLACE + "/revision", Integer.toString(issued.entry().revision()))
                .with(PLACE, signatures)
                .withWords(PLACE + "/options", asked.taken())
                .withWords(PLACE + "/declined", declined)
                .with(PLACE + "/price", price.text())
                .with(PLACE + "/bookDate", contract.proposed().bookDate().toString())
                .with(PLACE + "/templates", Fingerprint.of(issued.office().templates()));
    }

    /** The contract, where one is signed, with the scope of work that it names as part of itself. */
    private static Set<PaperKind> signedPapers(Bid bid) {
        Set<PaperKind> papers = bid.prepared(EnumSet.of(PaperKind.CONTRACT));
        return papers.isEmpty() ? papers : EnumSet.of(PaperKind.CONTRACT, PaperKind.SCOPE);
    }

    private static Issue issue(
            DocumentNumber number, SealMark mark, IssuedProposal issued, JobText accepted, Bid bid, Yes asked) {
        try {
            Map<String, byte[]> papers =
                    RegisteredFiles.named(number, issued.office().issued(bid, signedPapers(bid), mark));
            Map<String, byte[]> files = new LinkedHashMap<>();
            Signatures.keep(files, number, asked.file(), asked.signed());
            JobText.keep(files, number.text(), accepted);
            files.put(FileName.safe(number.text()) + "-source.zip", issued.archive(accepted));
            Map<String, String> facts = new LinkedHashMap<>();
            facts.put(
                    "by",
                    String.join(
                            "; ",
                            bid.contracted()
                                    .job()
                                    .agreement()
                                    .accepted()
                                    .orElseThrow()
                                    .by()));
            SealedFigures.of(bid.contracted().contract()).forEach((name, figure) -> facts.put(name, figure.plain()));
            facts.put("bookDate", bid.proposedQuote().bookDate().toString());
            facts.put("templates", Fingerprint.of(issued.office().templates()));
            return Issue.of(papers, files, facts);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
