package spadework.form;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.office.Bid;
import spadework.office.Handout;
import spadework.office.Outcome;
import spadework.press.PageView;
import spadework.pricebook.LineItem;
import spadework.pricebook.Section;

/** The window of one job: the way on top, the page that is filled in, what comes of it beside, the tally below. */
final class JobWindow extends JFrame {
    private static final List<String> NAMES = List.of(
            "people",
            "walls",
            "water",
            "restoration",
            "price",
            "terms",
            "papers",
            "options",
            "agreement",
            "changes",
            "built");
    private static final int PRICE = 4;
    private static final int PAGE = 0;
    private static final int WORKING = 2;
    private static final int FOUND = 3;
    private static final int BOOK = 4;

    private final Desk desk;
    private final Outside outside;
    private final Keeper keeper;
    private final Saving saving;
    private final Stepping stepping;
    private final List<Page> pages;
    private final CardLayout cards = new CardLayout();
    private final JPanel work = new JPanel(cards);
    private final StationStrip way;
    private final TallyBar tally;
    private final Notice notice = new Notice();
    private final JTabbedPane beside = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.SCROLL_TAB_LAYOUT);
    private final AgreementPage agreement;
    private final PagePane sight;
    private final DrawingPane drawing;
    private final WorkingPane working;
    private final FoundPane found;
    private final BookPane book;
    private Optional<Shelf> shelf = Optional.empty();
    private Reach.Around around;
    private int at;

    JobWindow(Desk desk, Outside outside, LocalDate today, WindowMenu.Jobs jobs) {
        super();
        this.desk = desk;
        this.outside = outside;
        keeper = new Keeper(desk, refused -> notice.say(Words.of("file.refused", refused.getMessage())));
        saving = new Saving(desk, keeper, notice, this::reveal);
        stepping = new Stepping(desk, saving, notice::say);
        sight = new PagePane(desk);
        drawing = new DrawingPane(desk);
        working = new WorkingPane(desk, this::reveal);
        found = new FoundPane(desk, this::reveal);
        book = new BookPane(
                () -> desk.bid()
                        .map(Bid::book)
                        .or(() -> desk.office().book(desk.file().path())),
                this::take);
        PapersPage papers =
                new PapersPage(desk, new PapersPage.Acts(this::look, this::print, this::savePaper, this::letter));
        agreement = new AgreementPage(desk, stepping, outside, today);
        pages = Stations.of(
                desk,
                papers,
                new PricePage(desk, line -> {
                    beside.setSelectedIndex(WORKING);
                    working.open(line);
                }),
                agreement);
        way = new StationStrip(
                NAMES.stream().map(name -> Words.of("page." + name)).toList(), this::go);
        tally = new TallyBar(
                desk,
                () -> {
                    beside.setSelectedIndex(WORKING);
                    working.open(-1);
                },
                () -> FoundPane.items(desk).stream().findFirst().ifPresent(item -> reveal(item.cause())));
        arrange();
        setJMenuBar(WindowMenu.of(this, jobs));
        Keys.anywhere(getRootPane(), "ctrl shift Z", desk::redo);
        desk.onDraft(this::showDraft);
        desk.onAnswer(this::showAnswer);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowActivated(WindowEvent event) {
                saving.look();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                leave();
            }
        });
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        go(0);
        showDraft();
        desk.reckon();
        desk.office().prepare();
    }

    private void arrange() {
        for (int i = 0; i < pages.size(); i++) {
            JScrollPane scroll = new JScrollPane(pages.get(i));
            scroll.setBorder(null);
            scroll.getVerticalScrollBar().setUnitIncrement(24);
            work.add(scroll, NAMES.get(i));
        }
        beside.setName("beside");
        beside.getAccessibleContext().setAccessibleName(Words.of("beside"));
        beside.addTab(Words.of("pane.page"), sight);
        beside.addTab(Words.of("pane.drawing"), drawing);
        beside.addTab(Words.of("pane.working"), working);
        beside.addTab(Words.of("pane.found"), found);
        beside.addTab(Words.of("pane.book"), book);
        beside.addChangeListener(event -> SwingUtilities.invokeLater(this::showBeside));
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, work, beside);
        split.setName("split");
        split.setResizeWeight(0.62);
        split.setDividerLocation(836);
        split.setBorder(null);
        split.getAccessibleContext().setAccessibleName(Words.of("split"));
        JPanel top = new JPanel(new BorderLayout());
        top.add(way);
        top.add(notice, BorderLayout.SOUTH);
        add(top, BorderLayout.NORTH);
        add(split);
        add(tally, BorderLayout.SOUTH);
        setSize(1366, 768);
    }

    Desk desk() {
        return desk;
    }

    Saving saving() {
        return saving;
    }

    Notice notice() {
        return notice;
    }

    List<Page> pages() {
        return pages;
    }

    PagePane sight() {
        return sight;
    }

    /** Whether nothing is being reckoned, drawn or written. */
    boolean isIdle() {
        return desk.isIdle() && sight.isIdle() && keeper.isIdle() && stepping.isIdle() && agreement.isIdle();
    }

    /** Goes to a page. */
    void go(int index) {
        at = index;
        cards.show(work, NAMES.get(index));
        way.choose(index);
        pages.get(index).showAll();
    }

    /** Goes to a place of the job. */
    void reveal(String pointer) {
        String nearest = pointer;
        while (index(nearest).isEmpty() && !nearest.isEmpty()) {
            nearest = Pointer.above(nearest);
        }
        String place = nearest;
        go(index(place).orElse(0));
        SwingUtilities.invokeLater(() -> pages.get(at).reveal(place));
    }

    private Optional<Integer> index(String pointer) {
        for (int i = 0; i < pages.size(); i++) {
            if (!pointer.isEmpty() && pages.get(i).holds(pointer)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** Puts what is beside the page in front. */
    void beside(int index) {
        beside.setSelectedIndex(index);
    }

    /** Opens the price book and waits for words. */
    void lookUp() {
        beside.setSelectedIndex(BOOK);
        SwingUtilities.invokeLater(() -> book.words().requestFocusInWindow());
    }

    /** What the shelf of this window looks through. */
    void around(Reach.Around what) {
        around = what;
    }

    /** Opens the shelf at one of its tabs; it is put away with this window. */
    Shelf shelf(int tab) {
        if (shelf.isEmpty()) {
            Shelf made = new Shelf(new Reach(desk, around));
            shelf = Optional.of(made);
            addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    made.leave();
                }
            });
        }
        shelf.get().open(tab);
        return shelf.get();
    }

    private void take(LineItem item) {
        Draft draft = desk.draft();
        String row = Pointer.of("/items", draft.rows("/items"));
        String section = item.section() == Section.WALL
                ? draft.shown("/walls/0/label")
                : item.section().label();
        desk.edit(draft.insertedBlank("/items", draft.rows("/items"))
                .typed(row + "/code", item.code())
                .typed(row + "/quantity", "1 " + item.unit().symbol())
                .typed(row + "/section", section));
        go(PRICE);
        reveal(row + "/quantity");
    }

    private void showDraft() {
        pages.get(at).showAll();
        tally.showAll();
        String name = desk.draft().shown("/title");
        setTitle(Words.of(
                desk.history().isSaved() ? "window.title" : "window.title.unsaved",
                name.isEmpty() ? Words.of("window.unnamed") : name,
                desk.file().path()));
    }

    private void showAnswer() {
        pages.get(at).showFaults();
        tally.showAll();
        List<Integer> counts = new ArrayList<>();
        pages.forEach(page -> counts.add(0));
        desk.faults().forEach(fault -> index(fault.place().pointer()).ifPresent(i -> counts.set(i, counts.get(i) + 1)));
        way.count(counts);
        showBeside();
    }

    private void showBeside() {
        sight.showAnswer();
        drawing.showAnswer();
        working.showAnswer();
        found.showAnswer();
        book.showAnswer();
        beside.setTitleAt(
                FOUND,
                Words.of(
                        "pane.found.count",
                        desk.faults().size() + desk.findings().size()));
    }

    private void look(Handout paper) {
        sight.choose(paper);
        beside.setSelectedIndex(PAGE);
    }

    private void print(Handout paper) {
        desk.bid().filter(bid -> desk.isCurrent() && bid.openStops().isEmpty()).ifPresent(bid -> {
            Path job = desk.file().path();
            stepping.work(
                    () -> PageView.of(desk.office().handedOut(bid, paper, job)),
                    view -> outside.print(view.sheets(), PaperNames.of(paper), view::close));
        });
    }

    private void savePaper(Handout paper) {
        desk.bid().filter(bid -> desk.isCurrent()).ifPresent(bid -> {
            Path job = desk.file().path();
            outside.saveAs(this, job.toAbsolutePath().resolveSibling(paper.file() + ".pdf"))
                    .ifPresent(target -> stepping.work(() -> desk.office().save(bid, paper, job, target), this::tell));
        });
    }

    private void letter(List<Handout> papers) {
        desk.bid().filter(bid -> desk.isCurrent()).ifPresent(bid -> {
            Path job = desk.file().path();
            outside.saveAs(this, job.toAbsolutePath().resolveSibling(Words.of("letter.file")))
                    .ifPresent(
                            target -> stepping.work(() -> desk.office().letter(bid, papers, job, target), this::tell));
        });
    }

    private void tell(Outcome outcome) {
        notice.say(OutcomeWords.of(outcome));
    }

    /** Keeps what is not saved aside and closes; nothing is asked, nothing is lost. */
    void leave() {
        stepping.close();
        keeper.close();
        desk.close();
        sight.close();
        agreement.stop();
        dispose();
    }
}
