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
import spadework.contract.PricedChange;
import spadework.contract.SealedFigures;
import spadework.contract.Sum;
import spadework.intake.Intake;
import spadework.job.Accepted;
import spadework.job.Change;
import spadework.job.ChangeState;
import spadework.job.Decision;
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
import spadework.register.SealMark;
import spadework.wording.Wording;

/** Records what became of a change order: both sides signed it, or the homeowner declined. */
public final class Deciding {
    private static final Wording WORDS = Wording.beside(Deciding.class);

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; nothing can have been signed later */
    public Deciding(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /** A decision as it comes in. */
    private record Asked(Path file, JobText text, int index, boolean accepted, SignatureInput signed) {
        private String place() {
            return "/changes/" + index;
        }

        private String decision() {
            return place() + "/decision";
        }
    }

    /**
     * Accepts or declines a pending change order. An accepted one is filed with its paper once everybody signed, and
     * its price stands from then on.
     *
     * @param number of the change order
     * @param yes who decided, when and how; of one that is declined the signature may be missing
     * @throws IOException if a file cannot be read or written
     */
    public Outcome decide(Path job, int number, boolean accepted, SignatureInput yes) throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.readAndBid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        List<PricedChange> changes = bid.dossier().contract().changes();
        Optional<PricedChange> change =
                changes.stream().filter(one -> one.change().number() == number).findFirst();
        JobRecords records = JobRecords.beside(file);
        int index = change.map(changes::indexOf).orElse(-1);
        Asked asked = new Asked(file, JobText.of(Files.readString(file)), index, accepted, yes);
        DocumentNumber paper = new DocumentNumber(bid.dossier().job().number(), DocumentKind.CHANGE_ORDER, number);
        if (change.isPresent() && records.decided(paper).isPresent()) {
            return repeated(records, records.decided(paper).get(), asked);
        }
        GatheredSignatures gathered = GatheredSignatures.on(records, paper);
        List<String> reasons = reasons(
                bid,
                change.map(one -> state(one, yes)).orElse(List.of(WORDS.get("deciding.there-no-change-order", number))),
                asked);
        reasons.addAll(records.stopped());
        if (accepted) {
            reasons.addAll(order(changes, number, yes));
        }
        if (accepted) {
            reasons.addAll(gathered.reasons(yes, ""));
        }
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        List<String> missing = gathered.missing(bid.dossier().job(), yes);
        if (accepted && !missing.isEmpty()) {
            return gathered.add(records, file, yes, "", missing);
        }
        JobText decided = decided(asked, change.orElseThrow(), accepted ? gathered.with(yes) : List.of(yes));
        BidResult after = office.bid(decided.text(), file);
        if (after instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Event event = accepted ? Event.CHANGE_ORDER_ACCEPTED : Event.CHANGE_ORDER_DECLINED;
        Entry entry = Register.of(records.folder())
                .append(yes.on(), event, paper, OnceGuard.decided(paper), issue(paper, decided, (Bid) after, asked));
        decided.write(file, List.of(asked.place() + "/state", asked.decision()));
        return new Outcome.Issued(paper.text(), RegisteredFiles.paths(records.folder(), entry));
    }

    /** It was decided before; with the same facts it stands, or is finished where the program died on the way. */
    private static Outcome repeated(JobRecords records, Entry entry, Asked asked) throws IOException {
        Optional<JobText> kept = InterruptedStep.kept(records, entry);
        String state = entry.event() == Event.CHANGE_ORDER_ACCEPTED ? "accepted" : "declined";
        List<String> by = kept.map(text -> text.words(asked.decision() + "/by")).orElse(List.of());
        Optional<Outcome> refusal = new RepeatedStep(
                        entry.number().orElseThrow().text())
                .fact("what was decided", state, asked.accepted() ? "accepted" : "declined")
                .fact("the day", entry.on().toString(), asked.signed().on().toString())
                .fact(
                        "who decided",
                        RepeatedStep.among(by, asked.signed().by()),
                        String.join("; ", asked.signed().by()))
                .refusal();
        List<String> places = List.of(asked.place() + "/state", asked.decision());
        return refusal.isPresent()
                ? refusal.get()
                : InterruptedStep.written(records, entry, asked.text(), places, asked.file());
    }

    /**
     * A change order says what the contract comes to with it and when the work ends, counted from the ones before it.
     * So they are signed in the order of their numbers, and of their days.
     */
    private static List<String> order(List<PricedChange> changes, int number, SignatureInput yes) {
        List<String> reasons = new ArrayList<>();
        for (PricedChange priced : changes) {
            Change before = priced.change();
            Optional<LocalDate> day = before.decision().map(Decision::on);
            if (before.number() < number && before.state() == ChangeState.PENDING) {
                reasons.add(WORDS.get("deciding.change-order-still-open", before.number(), number, before.number()));
            } else if (before.number() < number && day.isPresent() && yes.on().isBefore(day.get())) {
                reasons.add(WORDS.get("deciding.change-order-signed-on", before.number(), day.get(), yes.on(), number));
            }
        }
        return reasons;
    }

    /** What the state of a change order has against its being decided now. */
    private static List<String> state(PricedChange priced, SignatureInput yes) {
        Change change = priced.change();
        if (change.state() != ChangeState.PENDING) {
            return List.of(WORDS.get("deciding.job-file-says-change", change.number()));
        }
        return yes.on().isBefore(change.issued())
                ? List.of(WORDS.get("deciding.change-order-issued-on", change.number(), change.issued(), yes.on()))
                : List.of();
    }

    private List<String> reasons(Bid bid, List<String> state, Asked asked) {
        SignatureInput yes = asked.signed();
        List<String> reasons = new ArrayList<>(
                asked.accepted()
                        ? Signatures.reasons(asked.file(), bid.dossier().job(), yes, today)
                        : Signatures.future(yes.on(), today, "declined"));
        reasons.addAll(state);
        bid.dossier()
                .job()
                .agreement()
                .accepted()
                .map(Accepted::on)
                .filter(signed -> yes.on().isBefore(signed))
                .ifPresent(signed -> reasons.add(WORDS.get("deciding.contract-signed-on", signed, yes.on())));
        if (asked.accepted()) {
            bid.openStops().forEach(stop -> reasons.add(office.described(stop)));
        }
        return reasons;
    }

    private static JobText decided(Asked asked, PricedChange change, List<SignatureInput> signatures) {
        JobText stated = asked.text().with(asked.place() + "/state", asked.accepted() ? "accepted" : "declined");
        SignatureInput last = asked.signed();
        return asked.accepted() || last.file().isPresent() || last.typed().isPresent()
                ? stated.with(asked.decision(), signatures)
                        .with(
                                asked.decision() + "/price",
                                minus(change.figured().total().text()))
                : stated;
    }

    /** The file takes a hyphen for a minus as well; it is what a keyboard has. */
    private static String minus(String amount) {
        return amount.replace('\u2212', '-');
    }

    private Issue issue(DocumentNumber number, JobText decided, Bid bid, Asked asked) {
        try {
            Map<String, byte[]> files = new LinkedHashMap<>();
            String name = "change-order-" + number.count() + "[.-].*";
            SealMark mark = Register.of(asked.file().toAbsolutePath().getParent())
                    .mark()
                    .orElseThrow();
            Map<String, byte[]> papers =
                    new LinkedHashMap<>(office.issued(bid, EnumSet.of(PaperKind.CHANGE_ORDER), mark));
            papers.keySet().removeIf(each -> !each.matches(name));
            Signatures.keep(files, number, asked.file(), asked.signed());
            JobText.keep(files, number.text(), decided);
            Map<String, String> facts = new LinkedHashMap<>();
            facts.put("by", String.join("; ", decided.words(asked.decision() + "/by")));
            if (asked.accepted()) {
                Sum sum = bid.dossier().contract().changes().get(asked.index()).agreed();
                facts.put(JobRecords.CHANGE_PRICE, sum.price().plain());
                facts.put(JobRecords.CHANGE_TAX, sum.tax().plain());
            }
            facts.put(SealedFigures.TOTAL, bid.dossier().contract().total().plain());
            return Issue.of(RegisteredFiles.named(number, papers), files, facts);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
