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
import spadework.form.kit.FailureMessages;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.NoticeBar;
import spadework.form.kit.Platform;
import spadework.form.library.LibraryContext;
import spadework.form.library.LibraryWindow;
import spadework.form.page.AgreementPage;
import spadework.form.page.FormPage;
import spadework.form.page.JobPages;
import spadework.form.page.OutcomeMessages;
import spadework.form.page.PageStrip;
import spadework.form.page.PapersPage;
import spadework.form.page.PricePage;
import spadework.form.session.AutoSave;
import spadework.form.session.JobSaving;
import spadework.form.session.JobSession;
import spadework.form.session.PaperNames;
import spadework.form.session.StepRunner;
import spadework.form.view.BookSearchPane;
import spadework.form.view.DrawingPane;
import spadework.form.view.FindingsPane;
import spadework.form.view.PaperPreview;
import spadework.form.view.SummaryBar;
import spadework.form.view.WorkingsPane;
import spadework.office.JobPaper;
import spadework.office.Outcome;
import spadework.press.page.PageView;
import spadework.pricebook.LineItem;
import spadework.pricebook.Section;

/** The window of one job: the way on top, the page that is filled in, what comes of it beside, the tally below. */
public final class JobWindow extends JFrame {
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

    private final JobSession desk;
    private final Platform outside;
    private final AutoSave keeper;
    private final JobSaving saving;
    private final StepRunner stepping;
    private final List<FormPage> pages;
    private final CardLayout cards = new CardLayout();
    private final JPanel work = new JPanel(cards);
    private final PageStrip way;
    private final SummaryBar tally;
    private final NoticeBar notice = new NoticeBar();
    private final JTabbedPane beside = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.SCROLL_TAB_LAYOUT);
    private final AgreementPage agreement;
    private final PaperPreview sight;
    private final DrawingPane drawing;
    private final WorkingsPane working;
    private final FindingsPane found;
    private final BookSearchPane book;
    private Optional<LibraryWindow> shelf = Optional.empty();
    private LibraryContext.Around around;
    private int at;
    private boolean leaving;

    JobWindow(JobSession desk, Platform outside, LocalDate today, WindowMenu.Jobs jobs) {
        super();
        this.desk = desk;
        this.outside = outside;
        keeper = new AutoSave(desk, refused -> notice.say(FailureMessages.of(refused)));
        saving = new JobSaving(desk, keeper, notice, this::reveal);
        stepping = new StepRunner(desk, saving, notice::say);
        sight = new PaperPreview(desk);
        drawing = new DrawingPane(desk);
        working = new WorkingsPane(desk, this::reveal);
        found = new FindingsPane(desk, this::reveal);
        book = new BookSearchPane(desk::book, this::take);
        PapersPage papers =
                new PapersPage(desk, new PapersPage.Acts(this::look, this::print, this::savePaper, this::letter));
        agreement = new AgreementPage(desk, stepping, outside, today);
        pages = JobPages.of(
                desk,
                papers,
                new PricePage(desk, line -> {
                    beside.setSelectedIndex(WORKING);
                    working.open(line);
                }),
                agreement);
        way = new PageStrip(
                NAMES.stream().map(name -> Messages.of("page." + name)).toList(), this::go);
        tally = new SummaryBar(
                desk,
                () -> {
                    beside.setSelectedIndex(WORKING);
                    working.open(-1);
                },
                () -> FindingsPane.items(desk).stream().findFirst().ifPresent(item -> reveal(item.cause())));
        arrange();
        setJMenuBar(WindowMenu.of(this, jobs));
        KeyBindings.anywhere(getRootPane(), "ctrl shift Z", desk::redo);
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
        desk.price();
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
        beside.getAccessibleContext().setAccessibleName(Messages.of("beside"));
        beside.addTab(Messages.of("pane.page"), sight);
        beside.addTab(Messages.of("pane.drawing"), drawing);
        beside.addTab(Messages.of("pane.working"), working);
        beside.addTab(Messages.of("pane.found"), found);
        beside.addTab(Messages.of("pane.book"), book);
        beside.addChangeListener(event -> SwingUtilities.invokeLater(this::showBeside));
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, work, beside);
        split.setName("split");
        split.setResizeWeight(0.62);
        split.setDividerLocation(836);
        split.setBorder(null);
        split.getAccessibleContext().setAccessibleName(Messages.of("split"));
        JPanel top = new JPanel(new BorderLayout());
        top.add(way);
        top.add(notice, BorderLayout.SOUTH);
        add(top, BorderLayout.NORTH);
        add(split);
        add(tally, BorderLayout.SOUTH);
        setSize(1366, 768);
    }

    JobSession desk() {
        return desk;
    }

    public JobSaving saving() {
        return saving;
    }

    public NoticeBar notice() {
        return notice;
    }

    List<FormPage> pages() {
        return pages;
    }

    PaperPreview sight() {
        return sight;
    }

    /** Whether nothing is being priced, drawn, read or written. */
    boolean isIdle() {
        return desk.work().isIdle();
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
    void around(LibraryContext.Around what) {
        around = what;
    }

    /** Opens the shelf at one of its tabs; it is put away with this window. */
    LibraryWindow shelf(int tab) {
        if (shelf.isEmpty()) {
            LibraryWindow made = new LibraryWindow(new LibraryContext(desk, around));
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
        setTitle(Messages.of(
                desk.history().isSaved() ? "window.title" : "window.title.unsaved",
                name.isEmpty() ? Messages.of("window.unnamed") : name,
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
                Messages.of(
                        "pane.found.count",
                        desk.faults().size() + desk.findings().size()));
    }

    private void look(JobPaper paper) {
        sight.choose(paper);
        beside.setSelectedIndex(PAGE);
    }

    private void print(JobPaper paper) {
        desk.bid().filter(bid -> desk.isCurrent() && bid.openStops().isEmpty()).ifPresent(bid -> {
            Path job = desk.file().path();
            stepping.work(
                    () -> PageView.of(desk.office().handedOut(bid, paper, job)),
                    view -> outside.print(view.sheets(), PaperNames.of(paper), view::close));
        });
    }

    private void savePaper(JobPaper paper) {
        desk.bid().filter(bid -> desk.isCurrent()).ifPresent(bid -> {
            Path job = desk.file().path();
            outside.saveAs(this, job.toAbsolutePath().resolveSibling(paper.file() + ".pdf"))
                    .ifPresent(target -> stepping.work(() -> desk.office().save(bid, paper, job, target), this::tell));
        });
    }

    private void letter(List<JobPaper> papers) {
        desk.bid().filter(bid -> desk.isCurrent()).ifPresent(bid -> {
            Path job = desk.file().path();
            outside.saveAs(this, job.toAbsolutePath().resolveSibling(Messages.of("letter.file")))
                    .ifPresent(
                            target -> stepping.work(() -> desk.office().letter(bid, papers, job, target), this::tell));
        });
    }

    private void tell(Outcome outcome) {
        notice.say(OutcomeMessages.of(outcome));
    }

    /**
     * Lets what is being written be written to its end, keeps what is not saved aside, and closes; nothing is asked,
     * nothing is lost. Where it cannot be kept the window is there again, and says so.
     */
    public void leave() {
        if (!leaving) {
            leaving = true;
            setVisible(false);
            stepping.afterAll(
                    () -> shelf.ifPresentOrElse(open -> open.afterAll(this::keepAndClose), this::keepAndClose));
        }
    }

    private void keepAndClose() {
        keeper.keepLast(this::close, refused -> {
            leaving = false;
            setVisible(true);
            notice.say(FailureMessages.of(refused), new NoticeBar.Answer("leave.unsaved", this::close));
        });
    }

    private void close() {
        stepping.close();
        keeper.close();
        desk.close();
        sight.close();
        agreement.stop();
        dispose();
    }
}
