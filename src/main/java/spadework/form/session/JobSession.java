// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import spadework.draft.Assumptions;
import spadework.draft.Draft;
import spadework.draft.FileSchema;
import spadework.draft.History;
import spadework.draft.Pointer;
import spadework.draft.UsualJob;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.Messages;
import spadework.form.kit.WorkCounter;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.BidView;
import spadework.office.Office;
import spadework.office.Refusal;
import spadework.office.files.JobFile;
import spadework.office.files.JobsHome;
import spadework.pricebook.PriceBook;

/**
 * The job on screen: its draft with all that was done to it, and what the office says to it. Everything here happens
 * on the window's thread; the office works in the background.
 */
public final class JobSession {
    private static final long LONGEST_OPENING = 10;

    private final Office office;
    private final List<Runnable> draftWatchers = new ArrayList<>();
    private final List<Runnable> answerWatchers = new ArrayList<>();
    private final WorkCounter work = new WorkCounter();
    private final BackgroundTasks pricing = new BackgroundTasks("pricing", work, this::failed);
    private JobFile file;
    private History history;
    private List<Fault> faults = List.of();
    private Optional<Bid> bid = Optional.empty();
    private Optional<BidView> view = Optional.empty();
    private boolean current;
    private JobsHome home = JobsHome.FOLDERS;
    private int step;
    private int stepOfTotal;
    private Optional<Dollars> before = Optional.empty();
    private Optional<Bid> previous = Optional.empty();
    private Optional<PriceBook> book = Optional.empty();
    private Optional<Exception> broken = Optional.empty();
    private Optional<Assumptions> assumed = Optional.empty();
    private UsualJobChoice usual = UsualJobChoice.NONE;
    private LocalDate today = LocalDate.EPOCH;
    private OpenGroups openGroups = new OpenGroups(Set.of(), open -> {});

    /** What the office says; the book as it can be read where there is no bid to have it from. */
    private record Answer(BidResult result, Optional<PriceBook> book, Optional<Provisional> provisional) {}

    /** A bid by what is assumed where the draft is silent; nobody can be handed a paper of it. */
    private record Provisional(Bid bid, Assumptions assumed) {}

    public JobSession(Office office, JobFile file, History history) {
        this.office = office;
        this.file = file;
        this.history = history;
    }

    public Office office() {
        return office;
    }

    public JobFile file() {
        return file;
    }

    public Draft draft() {
        return history.now();
    }

    public History history() {
        return history;
    }

    /** Tells whenever the draft or its saved mark has changed. */
    public void onDraft(Runnable watcher) {
        draftWatchers.add(watcher);
    }

    /** Tells whenever the office has answered. */
    public void onAnswer(Runnable watcher) {
        answerWatchers.add(watcher);
    }

    /** A keystroke at a place; those that follow each other at the same place are one step. */
    public void type(String pointer, String typed) {
        become(history.edited(draft().typed(pointer, typed), pointer));
    }

    /** A whole step. */
    public void edit(Draft next) {
        become(history.edited(next, ""));
    }

    /** The field was left: what follows is another step. */
    public void settle() {
        history = history.settled();
    }

    public void undo() {
        become(history.undone());
    }

    public void redo() {
        become(history.redone());
    }

    /** The draft as it stands is what this file has. */
    void saved(JobFile as) {
        file = as;
        history = history.savedNow();
        draftWatchers.forEach(Runnable::run);
    }

    /** The same for a draft that was edited on while it was being saved. */
    void savedAs(JobFile as, Draft draft) {
        file = as;
        history = new History(draft(), history.past(), history.future(), Optional.of(draft), history.open());
        draftWatchers.forEach(Runnable::run);
    }

    /**
     * Goes on from what somebody else wrote, as a step that can be undone.
     *
     * @param written what the file says now
     * @param draft the same with what was typed here
     */
    void merged(JobFile as, Draft written, Draft draft) {
        file = as;
        become(history.edited(draft, ""));
        history = new History(draft(), history.past(), history.future(), Optional.of(written), "");
        draftWatchers.forEach(Runnable::run);
    }

    /** Goes on over a file that says nothing which could be put together with the draft. */
    void goesOver(JobFile as) {
        file = as;
    }

    /** Where the job is at home; in its folder alone, where nobody says otherwise. */
    public JobsHome home() {
        return home;
    }

    /** Says where the job is at home. */
    public void livesIn(JobsHome where) {
        home = where;
    }

    /**
     * A step of the agreement wrote the file. What is signed is not undone: nothing goes behind it.
     *
     * @param written what the file says now
     * @param draft the same with what was typed while the step was under way
     */
    void agreed(JobFile as, Draft written, Draft draft) {
        file = as;
        step++;
        history = History.ofSaved(written).edited(draft, "");
        draftWatchers.forEach(Runnable::run);
        price();
    }

    @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
    private void become(History next) {
        boolean sameStep = next.past().equals(history.past()) && next.future().equals(history.future());
        boolean same = next.now() == history.now();
        history = next;
        if (!same) {
            step += sameStep ? 0 : 1;
            draftWatchers.forEach(Runnable::run);
            price();
        }
    }

    /** Prices nothing before the window is open: until then the machine is the window's. */
    public void awaits(CountDownLatch open) {
        pricing.run(
                () -> {
                    try {
                        return open.await(LONGEST_OPENING, TimeUnit.SECONDS);
                    } catch (InterruptedException closed) {
                        Thread.currentThread().interrupt();
                        return false;
                    }
                },
                opened -> {});
    }

    /** Asks the office for its answer to the draft as it stands. */
    public void price() {
        current = false;
        Draft asked = draft();
        int asking = step;
        Path path = file.path();
        Optional<UsualJob> kind = asked.at("/accepted").isPresent() ? Optional.empty() : usual.of(asked);
        pricing.latest(
                "bid", () -> answer(asked, path, kind.stream().toList()), answer -> answered(asked, asking, answer));
    }

    /** @param kind of job that fills what is missing; none for a signed one */
    private Answer answer(Draft asked, Path path, List<UsualJob> kind) {
        BidResult result = office.bid(asked.text(), path);
        if (result instanceof Bid made) {
            return new Answer(made, Optional.of(made.book()), Optional.empty());
        }
        Optional<Provisional> provisional = kind.stream()
                .findFirst()
                .map(one -> one.in(asked))
                .filter(assumptions -> !assumptions.all().isEmpty())
                .flatMap(assumptions -> office.bid(assumptions.filled().text(), path) instanceof Bid made
                        ? Optional.of(new Provisional(made, assumptions))
                        : Optional.empty());
        return new Answer(result, provisional.map(one -> one.bid().book()).or(() -> office.book(path)), provisional);
    }

    @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
    private void answered(Draft asked, int asking, Answer answer) {
        broken = Optional.empty();
        current = asked == draft();
        faults = answer.result() instanceof Refusal refusal ? refusal.faults() : List.of();
        assumed = answer.provisional().map(Provisional::assumed);
        Optional<Bid> answered = answer.result() instanceof Bid whole
                ? Optional.of(whole)
                : answer.provisional().map(Provisional::bid);
        answered.ifPresent(made -> {
            if (asking != stepOfTotal || bid.isEmpty()) {
                before = total();
                previous = bid;
                stepOfTotal = asking;
            }
            bid = Optional.of(made);
            view = Optional.of(office.view(made, Messages.language()));
        });
        book = bid.map(Bid::book).or(answer::book);
        answerWatchers.forEach(Runnable::run);
    }

    private void failed(Exception thrown) {
        broken = Optional.of(thrown);
        answerWatchers.forEach(Runnable::run);
    }

    /** What kept the office from answering at all, as a template at fault. */
    public Optional<Exception> broken() {
        return broken;
    }

    /** What is under way in the window of this job. */
    public WorkCounter work() {
        return work;
    }

    /** The price book as this job uses it, as it was when the office last answered. */
    public Optional<PriceBook> book() {
        return book;
    }

    /** Whether the bid is the one of the draft as it stands; it is an older one while the draft has faults. */
    public boolean isCurrent() {
        return current && faults.isEmpty() && bid.isPresent();
    }

    /** The latest job that could be priced. */
    public Optional<Bid> bid() {
        return bid;
    }

    /** The same as the window's language has it. */
    public Optional<BidView> view() {
        return view;
    }

    /** What the price book says of an item, in the window's language. */
    public String ofBook(String text) {
        return view().map(shown -> shown.ofBook(text)).orElse(text);
    }

    public Optional<Dollars> total() {
        return bid.map(Bid::total);
    }

    /** What the price still rests on that nobody has written; nothing where every value is. */
    public Optional<Assumptions> assumed() {
        return assumed;
    }

    /** The kinds of job that the company keeps. */
    public UsualJobChoice usual() {
        return usual;
    }

    /** The day on which the window was opened. */
    public LocalDate today() {
        return today;
    }

    /** The day of the proposal; today where it has none. */
    public LocalDate day() {
        try {
            return LocalDate.parse(draft().shown("/issued"));
        } catch (DateTimeException none) {
            return today;
        }
    }

    public void opensOn(LocalDate day) {
        today = day;
    }

    /** The groups of fields that somebody opened. */
    public OpenGroups openGroups() {
        return openGroups;
    }

    /** Says which groups were left open, before the first page is built. */
    public void opens(OpenGroups groups) {
        openGroups = groups;
    }

    /** Says which kinds of job there are, before the first price. */
    public void keepsUsual(UsualJobChoice kinds) {
        usual = kinds;
    }

    /** The job is of that kind: what the company decides for it is written, as one step. */
    public void startAs(UsualJob kind) {
        usual = usual.choosing(kind.name());
        edit(kind.onto(draft()));
        price();
    }

    /** The bid before the last edit. */
    public Optional<Bid> previous() {
        return previous;
    }

    /** What the total changed by since the last edit. */
    public Optional<Dollars> change() {
        return before.flatMap(old -> total().map(now -> now.minus(old)));
    }

    public List<Fault> faults() {
        return faults;
    }

    /** What is wrong at a place or inside it. */
    public List<Fault> faultsIn(String pointer) {
        return faults.stream()
                .filter(fault -> Pointer.isIn(fault.place().pointer(), pointer))
                .toList();
    }

    /** The same for a field; one whose value stands for its whole group has the group's own faults too. */
    public List<Fault> faultsAt(String pointer) {
        String above = Pointer.above(pointer);
        boolean first = FileSchema.job()
                .at(above)
                .filter(spot -> spot.either()
                        && pointer.equals(Pointer.of(above, spot.keys().get(0))))
                .isPresent();
        List<Fault> own = new ArrayList<>(faultsIn(pointer));
        faults.stream()
                .filter(fault -> first && fault.place().pointer().equals(above))
                .forEach(own::add);
        return own;
    }

    /** Findings of the bid, gravest first; a stop that somebody answers for counts as an advice. */
    public List<Finding> findings() {
        List<Finding> all = bid.map(Bid::findings).orElse(List.of());
        List<Finding> sorted = new ArrayList<>(all.stream()
                .filter(f -> f.severity() == Severity.STOP && !isAnswered(f))
                .toList());
        all.stream().filter(f -> !sorted.contains(f) && !isAnswered(f)).forEach(sorted::add);
        all.stream().filter(this::isAnswered).forEach(sorted::add);
        return sorted;
    }

    public boolean isAnswered(Finding finding) {
        return bid.filter(made -> made.isAnsweredFor(finding)).isPresent();
    }

    public void close() {
        pricing.stop();
    }
}
