// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.beans.PropertyChangeListener;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.NoticeBar;
import spadework.form.kit.Platform;
import spadework.form.kit.Theme;
import spadework.form.library.LibraryContext;
import spadework.form.library.LibraryTab;
import spadework.form.library.LibraryWindow;
import spadework.form.page.AgreementPage;
import spadework.form.page.FaultStrip;
import spadework.form.page.FormPage;
import spadework.form.page.JobPage;
import spadework.form.page.JobStop;
import spadework.form.page.PageStrip;
import spadework.form.page.PagesOnDemand;
import spadework.form.page.PapersPage;
import spadework.form.page.PeoplePage;
import spadework.form.page.PlanPage;
import spadework.form.page.PricePage;
import spadework.form.page.StartPage;
import spadework.form.session.AutoSave;
import spadework.form.session.JobFiles;
import spadework.form.session.JobSaving;
import spadework.form.session.JobSession;
import spadework.form.session.OfficeWatch;
import spadework.form.session.StepRunner;
import spadework.form.session.UsualJobChoice;
import spadework.form.view.BookSearchPane;
import spadework.form.view.DrawingPane;
import spadework.form.view.FindingsPane;
import spadework.form.view.FoundItem;
import spadework.form.view.PaperPreview;
import spadework.form.view.SummaryBar;
import spadework.form.view.WhatIfPane;
import spadework.form.view.WorkingsPane;
import spadework.office.JobPaper;
import spadework.office.files.UsualJobs;
import spadework.pricebook.LineItem;
import spadework.pricebook.Section;

/** The window of one job: the way on top, the page that is filled in, what comes of it beside, the summary below. */
public final class JobWindow extends JFrame {
    private final JobSession session;
    private final Platform platform;
    private final AutoSave autoSave;
    private final JobSaving saving;
    private final StepRunner stepRunner;
    private final Optional<OfficeWatch> watch;
    private final JobFiles files;
    private final PaperActions papers;
    private final PagesOnDemand pages;
    private final CardLayout cards = new CardLayout();
    private final JPanel work = new JPanel(cards);
    private final PageStrip strip;
    private final SummaryBar summary;
    private final FaultStrip faultStrip;
    private final PropertyChangeListener focus = event -> showWrong();
    private final NoticeBar notice = new NoticeBar();
    private final JTabbedPane beside = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.SCROLL_TAB_LAYOUT);
    private final SideSplit split = new SideSplit(work, beside);
    private final PaperPreview preview;
    private final DrawingPane drawing;
    private final WorkingsPane working;
    private final FindingsPane found;
    private final BookSearchPane book;
    private final WhatIfPane whatIf;
    private Optional<LibraryWindow> library = Optional.empty();
    private LibraryContext.Environment around;
    private JobPage at = JobPage.START;
    private final CountDownLatch open = new CountDownLatch(1);
    private boolean leaving;
    private boolean handedOut;

    JobWindow(JobSession session, Platform platform, LocalDate today, WindowMenu.Jobs jobs) {
        super();
        this.session = session;
        this.platform = platform;
        autoSave = new AutoSave(session, refused -> notice.say(FailureMessages.of(refused)));
        saving = new JobSaving(session, autoSave, notice, this::reveal);
        stepRunner = new StepRunner(session, saving, notice::say);
        watch = session.home().isShared(session.file().path())
                ? Optional.of(new OfficeWatch(session, saving))
                : Optional.empty();
        preview = new PaperPreview(session);
        drawing = new DrawingPane(session);
        working = new WorkingsPane(session, this::reveal);
        found = new FindingsPane(session, this::reveal);
        whatIf = new WhatIfPane(session);
        book = new BookSearchPane(session::book, session::ofBook, this::take);
        papers = new PaperActions(this, session, stepRunner, platform, notice::say, this::handedOut);
        files = new JobFiles(session, saving, stepRunner, platform);
        pages = new PagesOnDemand(session, ownPages(today), this::addPage);
        strip = new PageStrip(this::begin);
        summary = new SummaryBar(
                session,
                () -> showWorking(-1),
                () -> FoundItem.of(session).stream().findFirst().ifPresent(item -> reveal(item.cause())),
                group -> {
                    show(SidePane.FOUND);
                    found.showOnly(group);
                });
        faultStrip = new FaultStrip(session);
        arrange();
        setJMenuBar(WindowMenu.of(this, jobs));
        KeyBindings.anywhere(getRootPane(), "ctrl shift Z", session::redo);
        session.onDraft(this::showDraft);
        session.onAnswer(this::showAnswer);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                // After what is waiting to be painted.
                SwingUtilities.invokeLater(() -> {
                    open.countDown();
                    session.office().prepare();
                });
            }

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
        go(JobPage.START);
        showDraft();
        session.awaits(open);
        session.price();
    }

    /** The pages that are more than fields and lists. */
    private Map<JobPage, Supplier<FormPage>> ownPages(LocalDate today) {
        return Map.of(
                JobPage.START,
                () -> new StartPage(session, this::reveal),
                JobPage.PLAN,
                () -> new PlanPage(session),
                JobPage.PEOPLE,
                () -> new PeoplePage(session, files),
                JobPage.PRICE,
                () -> new PricePage(session, this::showWorking),
                JobPage.PAPERS,
                () -> new PapersPage(
                        session, new PapersPage.Actions(this::look, papers::print, papers::save, papers::letter)),
                JobPage.AGREEMENT,
                () -> new AgreementPage(session, new AgreementPage.Services(stepRunner, platform, files), today));
    }

    private void showWorking(int line) {
        show(SidePane.WORKING);
        working.open(line);
    }

    private void addPage(JobPage page, FormPage built) {
        JScrollPane scroll = new JScrollPane(built);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        work.add(scroll, page.word());
    }

    private void arrange() {
        beside.setName("beside");
        beside.getAccessibleContext().setAccessibleName(Messages.of("beside"));
        Map<SidePane, JComponent> panes = new EnumMap<>(Map.of(
                SidePane.PAGE, preview,
                SidePane.DRAWING, drawing,
                SidePane.WORKING, working,
                SidePane.FOUND, found,
                SidePane.BOOK, book,
                SidePane.WHATIF, whatIf));
        panes.forEach((pane, shown) -> beside.addTab(Messages.of("pane." + pane.word()), shown));
        beside.addChangeListener(event -> SwingUtilities.invokeLater(this::showBeside));
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener("focusOwner", focus);
        JPanel bottom = new JPanel(new BorderLayout());
        bottom.add(new MessageStrip(notice, faultStrip));
        bottom.add(summary, BorderLayout.SOUTH);
        add(top(), BorderLayout.NORTH);
        add(split);
        add(bottom, BorderLayout.SOUTH);
        setSize(1366, 768);
    }

    /** The way through the job; where it is at home in an office also who else has it open. */
    private JComponent top() {
        watch.ifPresent(OfficeWatch::begin);
        return watch.<JComponent>map(looking -> {
                    JPanel top = new JPanel(new MigLayout("insets 0, gap 0, fillx", "[grow,fill][]16"));
                    top.add(strip, "wmin 0");
                    top.add(looking.label(), "w " + Theme.scaled(210) + "!");
                    return top;
                })
                .orElse(strip);
    }

    JobSession session() {
        return session;
    }

    public JobSaving saving() {
        return saving;
    }

    public NoticeBar notice() {
        return notice;
    }

    List<FormPage> pages() {
        return Stream.of(JobPage.values()).map(pages::at).toList();
    }

    FormPage page(JobPage page) {
        return pages.at(page);
    }

    PaperPreview preview() {
        return preview;
    }

    /** Whether nothing is being priced, drawn, read or written. */
    boolean isIdle() {
        return session.work().isIdle();
    }

    /** Goes to a page. */
    void go(JobPage page) {
        at = page;
        FormPage shown = pages.at(page);
        cards.show(work, page.word());
        strip.choose(page);
        shown.showAll();
    }

    /** Goes to a stop, to the page where it was left. */
    void go(JobStop stop) {
        strip.go(stop);
    }

    /** Goes to a page, and gives the keyboard to what is written first there. */
    void begin(JobPage page) {
        go(page);
        SwingUtilities.invokeLater(pages.at(page)::begin);
    }

    /** Opens every group of the page. */
    void openAllGroups() {
        pages.at(at).openAll();
    }

    /** Shows or hides the margin. */
    void toggleMargin() {
        whatIf.showMargin(summary.toggleMargin());
    }

    /** Decides all that the price assumes and that is the contractor's own to decide. */
    void decide() {
        ((StartPage) pages.at(JobPage.START)).decide();
    }

    /** Keeps what this job has decided as one more kind of job among the company's own. */
    void keepAsUsual() {
        Draft draft = session.draft();
        String name = draft.shown("/title").isBlank() ? draft.shown("/number") : draft.shown("/title");
        Path near = session.file().path().toAbsolutePath();
        session.usual()
                .of(draft)
                .map(kind -> kind.of(draft, name))
                .ifPresent(kept -> stepRunner.bring(
                        () -> {
                            UsualJobs.keep(near, kept);
                            return UsualJobs.near(near);
                        },
                        all -> {
                            session.keepsUsual(new UsualJobChoice(all, kept.name()));
                            pages.at(at).showAll();
                            notice.say(Messages.of("usual.kept", kept.name()));
                        }));
    }

    /** Goes to a place of the job. */
    void reveal(String pointer) {
        String nearest = pointer;
        while (PagesOnDemand.holding(nearest).isEmpty() && !nearest.isEmpty()) {
            nearest = Pointer.above(nearest);
        }
        String place = nearest;
        go(PagesOnDemand.holding(place).orElse(JobPage.START));
        SwingUtilities.invokeLater(() -> pages.at(at).reveal(place));
    }

    /** Puts what is beside the page in front. */
    void show(SidePane pane) {
        beside.setSelectedIndex(pane.ordinal());
        split.showSide();
    }

    /** Opens the price book and waits for words. */
    void lookUp() {
        show(SidePane.BOOK);
        SwingUtilities.invokeLater(() -> book.words().requestFocusInWindow());
    }

    /** What the library of this window looks through. */
    void around(LibraryContext.Environment what) {
        around = what;
    }

    /** Opens the library at one of its tabs; it is put away with this window. */
    LibraryWindow library(LibraryTab tab) {
        if (library.isEmpty()) {
            LibraryWindow made = new LibraryWindow(new LibraryContext(session, around));
            library = Optional.of(made);
            addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    made.leave();
                }
            });
        }
        library.get().open(tab);
        return library.get();
    }

    private void take(LineItem item) {
        Draft draft = session.draft();
        String row = Pointer.of("/items", draft.rows("/items"));
        String section = item.section() == Section.WALL
                ? draft.shown("/walls/0/label")
                : item.section().label();
        session.edit(draft.insertedBlank("/items", draft.rows("/items"))
                .typed(row + "/code", item.code())
                .typed(row + "/quantity", "1 " + item.unit().symbol())
                .typed(row + "/section", section));
        go(JobPage.PRICE);
        reveal(row + "/quantity");
    }

    private void showDraft() {
        pages.at(at).showAll();
        summary.showAll();
        String name = session.draft().shown("/title");
        setTitle(Messages.of(
                session.history().isSaved() ? "window.title" : "window.title.unsaved",
                name.isEmpty() ? Messages.of("window.unnamed") : name,
                session.file().path()));
    }

    private void showAnswer() {
        pages.at(at).showFaults();
        summary.showAll();
        Map<JobPage, Integer> counts = new EnumMap<>(JobPage.class);
        session.faults()
                .forEach(fault -> PagesOnDemand.holding(fault.place().pointer())
                        .ifPresent(page -> counts.merge(page, 1, Integer::sum)));
        strip.count(counts);
        strip.done(done(counts));
        showBeside();
        showWrong();
    }

    private Map<JobStop, Boolean> done(Map<JobPage, Integer> faults) {
        boolean priced = session.isCurrent();
        boolean visited = JobStop.VISIT.pages().stream().noneMatch(faults::containsKey)
                && session.total().isPresent();
        boolean accepted = session.draft().at("/accepted").isPresent();
        return Map.of(
                JobStop.VISIT, visited,
                JobStop.PRICE, priced,
                JobStop.PAPERS, accepted || handedOut,
                JobStop.AGREEMENT, accepted,
                JobStop.FINISH, session.draft().at("/closed").isPresent());
    }

    private void showWrong() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (owner != null
                && (SwingUtilities.isDescendingFrom(owner, pages.at(at))
                        || SwingUtilities.isDescendingFrom(owner, faultStrip))) {
            faultStrip.show(pages.at(at), owner);
        }
    }

    private void showBeside() {
        preview.showAnswer();
        drawing.showAnswer();
        working.showAnswer();
        found.showAnswer();
        book.showAnswer();
        whatIf.showAnswer();
        beside.setTitleAt(
                SidePane.FOUND.ordinal(),
                Messages.of("pane.found.count", FoundItem.of(session).size()));
    }

    private void handedOut() {
        handedOut = true;
        showAnswer();
    }

    private void look(JobPaper paper) {
        preview.choose(paper);
        show(SidePane.PAGE);
    }

    /** Keeps aside what is not saved, now. */
    void keepAside() {
        autoSave.keep();
    }

    /**
     * Lets what is being written be written to its end, keeps what is not saved aside, and closes; nothing is asked,
     * nothing is lost. Where it cannot be kept the window is there again, and says so.
     */
    public void leave() {
        if (!leaving) {
            leaving = true;
            setVisible(false);
            stepRunner.afterAll(
                    () -> library.ifPresentOrElse(open -> open.afterAll(this::keepAndClose), this::keepAndClose));
        }
    }

    private void keepAndClose() {
        autoSave.keepLast(this::close, refused -> {
            leaving = false;
            setVisible(true);
            notice.say(FailureMessages.of(refused), new NoticeBar.Answer("leave.unsaved", this::close));
        });
    }

    private void close() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener("focusOwner", focus);
        watch.ifPresent(OfficeWatch::close);
        stepRunner.close();
        autoSave.close();
        session.close();
        preview.close();
        whatIf.close();
        pages.ifBuilt(JobPage.AGREEMENT).ifPresent(page -> ((AgreementPage) page).stop());
        dispose();
    }
}
