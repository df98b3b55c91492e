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
import spadework.contract.PricedOption;
import spadework.contract.Sum;
import spadework.intake.Intake;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.Refusal;
import spadework.office.files.FileName;
import spadework.office.records.JobRecords;
import spadework.office.records.JobSource;
import spadework.paperwork.Dossier;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Issue;
import spadework.register.Register;

/** Records the homeowner's yes: the contract is filed with its source, and the job says what was agreed. */
public final class Accepting {
    private static final String PLACE = "/accepted";

    private final Office office;

    public Accepting(Office office) {
        this.office = office;
    }

    /**
     * Accepts the proposal that was issued last.
     *
     * @param taken labels of the options that the homeowner takes; the others are declined
     * @throws IOException if a file cannot be read or written
     */
    public Outcome accept(Path job, List<String> taken, SignatureInput yes) throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.bid(job, Optional.empty());
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        JobRecords records = JobRecords.beside(file);
        JobText text = JobText.of(Files.readString(file));
        if (records.contract().isPresent()) {
            return InterruptedStep.written(records, records.contract().get(), text, List.of(PLACE), file);
        }
        List<String> reasons = reasons(file, bid, records, taken, yes);
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        JobText accepted = accepted(text, bid.proposed(), records.proposal().orElseThrow(), taken, yes);
        BidResult after = office.bid(accepted.text(), file);
        if (after instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Entry entry = Register.of(records.folder())
                .issue(
                        DocumentKind.CONTRACT,
                        DocumentKind.CONTRACT.issued(),
                        bid.dossier().job().number(),
                        yes.on(),
                        OnceGuard.of(DocumentKind.CONTRACT.issued()),
                        number -> issue(file, number, accepted, (Bid) after, yes));
        accepted.write(file);
        return new Outcome.Issued(entry.number().orElseThrow().text(), RegisteredFiles.paths(records.folder(), entry));
    }

    private List<String> reasons(Path file, Bid bid, JobRecords records, List<String> taken, SignatureInput yes)
            throws IOException {
        List<String> reasons = new ArrayList<>(Signatures.reasons(file, yes));
        Dossier proposed = bid.proposed();
        bid.openStops().forEach(stop -> reasons.add(office.told(stop)));
        Optional<Entry> last = records.proposal();
        if (last.isEmpty()) {
            reasons.add("No proposal was issued; the homeowner accepts one that has a number. Issue it first; on the "
                    + "command line: spadework issue");
        } else if (!last.get()
                .fact(Issuing.FINGERPRINT)
                .equals(Optional.of(Fingerprint.of(file, proposed.job(), office.templates())))) {
            reasons.add("The job, the company, the price book or the templates changed since "
                    + last.get().number().orElseThrow().text()
                    + ". Issue it again; what was not issued cannot be accepted.");
        }
        LocalDate until = proposed.job().issued().plusDays(proposed.job().validDays());
        if (yes.on().isAfter(until)) {
            reasons.add("The price held until " + until + ". Issue the proposal again with a new date.");
        }
        if (yes.on().isBefore(proposed.job().issued())) {
            reasons.add("The proposal was issued on " + proposed.job().issued() + ", after " + yes.on() + ".");
        }
        List<String> known = proposed.job().agreement().options().stream()
                .map(option -> option.label())
                .toList();
        taken.stream()
                .filter(label -> !known.contains(label))
                .forEach(label ->
                        reasons.add("There is no option " + label + "; there is " + String.join(", ", known) + "."));
        return reasons;
    }

    private JobText accepted(JobText text, Dossier proposed, Entry issued, List<String> taken, SignatureInput yes) {
        List<PricedOption> options = proposed.contract().options();
        Dollars price = proposed.contract()
                .proposed()
                .total()
                .plus(Sum.of(options.stream()
                                .filter(option -> taken.contains(option.option().label()))
                                .map(PricedOption::sum)
                                .toList())
                        .total());
        List<String> declined = options.stream()
                .map(option -> option.option().label())
                .filter(label -> !taken.contains(label))
                .toList();
        return text.with(PLACE + "/revision", Integer.toString(issued.revision()))
                .with(PLACE, yes)
                .with(PLACE + "/options", taken)
                .with(PLACE + "/declined", declined)
                .with(PLACE + "/price", price.text())
                .with(
                        PLACE + "/bookDate",
                        proposed.contract().proposed().bookDate().toString())
                .with(PLACE + "/templates", Fingerprint.of(office.templates()));
    }

    private Issue issue(Path file, DocumentNumber number, JobText accepted, Bid bid, SignatureInput yes) {
        try {
            Map<String, byte[]> files = new LinkedHashMap<>();
            files.putAll(
                    RegisteredFiles.named(number, office.print(bid, bid.prepared(EnumSet.of(PaperKind.CONTRACT)))));
            Signatures.keep(files, number, file, yes);
            JobText.keep(files, number.text(), accepted);
            files.put(
                    FileName.safe(number.text()) + "-source.zip",
                    JobSource.of(
                                    file,
                                    accepted.text(),
                                    bid.proposed().job(),
                                    bid.proposed().company(),
                                    office.templates())
                            .archive());
            Map<String, String> facts = new LinkedHashMap<>();
            facts.put("by", String.join("; ", yes.by()));
            facts.put("total", bid.dossier().contract().contracted().total().plain());
            facts.put("bookDate", bid.proposedQuote().bookDate().toString());
            facts.put("templates", Fingerprint.of(office.templates()));
            return Issue.of(files, facts);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
