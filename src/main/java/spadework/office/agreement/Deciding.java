package spadework.office.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.contract.PricedChange;
import spadework.intake.Intake;
import spadework.job.ChangeState;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.Refusal;
import spadework.office.records.JobRecords;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Issue;
import spadework.register.Register;

/** Records what became of a change order: both sides signed it, or the homeowner declined. */
public final class Deciding {
    private final Office office;

    public Deciding(Office office) {
        this.office = office;
    }

    /**
     * Accepts or declines a pending change order. An accepted one is filed with its paper, and its price stands from
     * then on.
     *
     * @param number of the change order
     * @param yes who decided, when and how; of one that is declined the signature may be missing
     * @throws IOException if a file cannot be read or written
     */
    public Outcome decide(Path job, int number, boolean accepted, SignatureInput yes) throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.bid(job, Optional.empty());
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        List<PricedChange> changes = bid.dossier().contract().changes();
        Optional<PricedChange> change =
                changes.stream().filter(one -> one.change().number() == number).findFirst();
        JobRecords records = JobRecords.beside(file);
        JobText text = JobText.of(Files.readString(file));
        String place = "/changes/" + change.map(changes::indexOf).orElse(-1);
        DocumentNumber paper = new DocumentNumber(bid.dossier().job().number(), DocumentKind.CHANGE_ORDER, number);
        if (change.isPresent() && records.decided(paper).isPresent()) {
            List<String> places = List.of(place + "/state", place + "/decision");
            return InterruptedStep.written(records, records.decided(paper).get(), text, places, file);
        }
        List<String> reasons = reasons(file, bid, number, change, accepted, yes);
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        JobText decided = decided(text, place, change.orElseThrow(), accepted, yes);
        BidResult after = office.bid(decided.text(), file);
        if (after instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Event event = accepted ? Event.CHANGE_ORDER_ACCEPTED : Event.CHANGE_ORDER_DECLINED;
        Entry entry = Register.of(records.folder())
                .append(
                        yes.on(),
                        event,
                        paper,
                        OnceGuard.decided(paper),
                        issue(file, paper, decided, (Bid) after, yes));
        decided.write(file);
        return new Outcome.Issued(paper.text(), RegisteredFiles.paths(records.folder(), entry));
    }

    private List<String> reasons(
            Path file, Bid bid, int number, Optional<PricedChange> change, boolean accepted, SignatureInput yes) {
        List<String> reasons = new ArrayList<>(accepted ? Signatures.reasons(file, yes) : List.of());
        if (change.isEmpty()) {
            reasons.add("There is no change order " + number + ".");
        } else if (change.get().change().state() != ChangeState.PENDING) {
            reasons.add("Change order " + number + " was decided already.");
        } else if (yes.on().isBefore(change.get().change().issued())) {
            reasons.add("Change order " + number + " was issued on "
                    + change.get().change().issued() + ", after " + yes.on() + ".");
        }
        if (accepted) {
            bid.openStops().forEach(stop -> reasons.add(office.told(stop)));
        }
        return reasons;
    }

    private static JobText decided(
            JobText text, String place, PricedChange change, boolean accepted, SignatureInput yes) {
        String decision = place + "/decision";
        JobText stated = text.with(place + "/state", accepted ? "accepted" : "declined");
        return accepted || yes.file().isPresent() || yes.typed().isPresent()
                ? stated.with(decision, yes)
                        .with(
                                decision + "/price",
                                minus(change.reckoned().total().text()))
                : stated;
    }

    /** The file takes a hyphen for a minus as well; it is what a keyboard has. */
    private static String minus(String amount) {
        return amount.replace('\u2212', '-');
    }

    private Issue issue(Path file, DocumentNumber number, JobText decided, Bid bid, SignatureInput yes) {
        try {
            Map<String, byte[]> files = new LinkedHashMap<>();
            String name = "change-order-" + number.count() + ".";
            Map<String, byte[]> papers = new LinkedHashMap<>(office.print(bid, EnumSet.of(PaperKind.CHANGE_ORDER)));
            papers.keySet().removeIf(each -> !each.startsWith(name));
            files.putAll(RegisteredFiles.named(number, papers));
            Signatures.keep(files, number, file, yes);
            JobText.keep(files, number.text(), decided);
            Map<String, String> facts = new LinkedHashMap<>();
            facts.put("by", String.join("; ", yes.by()));
            facts.put("total", bid.dossier().contract().total().plain());
            return Issue.of(files, facts);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
