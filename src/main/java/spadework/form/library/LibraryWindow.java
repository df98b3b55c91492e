package spadework.form.library;

import java.awt.BorderLayout;
import java.io.IOException;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.NoticeBar;
import spadework.form.kit.PlainText;
import spadework.form.kit.WorkCounter;
import spadework.office.book.OpenBook;

/**
 * The shelf of the office, in a window beside the job's: the price book, old bids, what closed jobs teach, and prices
 * with something otherwise. All of it is the contractor's alone.
 */
public final class LibraryWindow extends JFrame {
    private static final int BOOK = 0;
    private static final int BIDS = 2;
    private static final int FEEDBACK = 3;

    private final NoticeBar notice = new NoticeBar();
    private final JLabel book = PlainText.of(new JLabel(" "));
    private final JLabel busy = new JLabel(" ");
    private final JTabbedPane tabs = new JTabbedPane();
    private final WorkCounter counter = new WorkCounter(this::showBusy);
    private final BackgroundTasks work = tasks("library");
    private final BackgroundTasks uses = tasks("uses");
    private final BackgroundTasks bids = tasks("bids");
    private final BackgroundTasks lessons = tasks("lessons");
    private final BookTab bookTab;
    private final BidsTab bidsTab;
    private final FeedbackTab feedbackTab;
    private final boolean[] seen = new boolean[FEEDBACK + 1];

    public LibraryWindow(LibraryContext reach) {
        super(Messages.of("shelf.title"));
        bookTab = new BookTab(reach, work, uses, this::opened);
        bidsTab = new BidsTab(reach, work, bids, counter);
        feedbackTab = new FeedbackTab(reach, lessons, () -> bookMoved(reach));
        tabs.setName("shelf.tabs");
        tabs.getAccessibleContext().setAccessibleName(Messages.of("shelf.tabs"));
        tab("book", bookTab);
        tab("sheets", new WorkbookTab(reach, work, () -> bookMoved(reach)));
        tab("bids", bidsTab);
        tab("feedback", feedbackTab);
        tab("otherwise", new WhatIfTab(reach, lessons));
        tabs.addChangeListener(event -> showTab());
        JPanel below = new JPanel(new MigLayout("insets 4 12 6 12, gap 16, fillx", "[][grow,fill][]"));
        below.add(new JLabel(Messages.of("shelf.own")));
        book.setName("shelf.file");
        below.add(book, "wmin 60");
        busy.setName("shelf.busy");
        below.add(busy);
        add(notice, BorderLayout.NORTH);
        add(tabs);
        add(below, BorderLayout.SOUTH);
        KeyBindings.anywhere(tabs, "ctrl W", () -> setVisible(false));
        KeyBindings.anywhere(tabs, "F5", () -> read(tabs.getSelectedIndex()));
        setSize(1366, 768);
        setDefaultCloseOperation(HIDE_ON_CLOSE);
    }

    private BackgroundTasks tasks(String name) {
        return new BackgroundTasks(
                name, counter, why -> failed(why instanceof IOException ? why.getMessage() : why.toString()));
    }

    private void tab(String key, JComponent tab) {
        int index = tabs.getTabCount();
        tabs.addTab(Messages.of("shelf.tab." + key), tab);
        KeyBindings.anywhere(tabs, "ctrl " + (index + 1), () -> tabs.setSelectedIndex(index));
    }

    /** Puts one of its tabs in front. */
    public void open(int index) {
        setVisible(true);
        toFront();
        tabs.setSelectedIndex(index);
        load(BOOK);
        showTab();
        JComponent first = index == BOOK
                ? bookTab.words().field()
                : index == BIDS ? bidsTab.words().field() : tabs;
        SwingUtilities.invokeLater(first::requestFocusInWindow);
    }

    /** What a tab shows is read when it is first looked at. */
    private void showTab() {
        load(tabs.getSelectedIndex());
    }

    private void load(int index) {
        if (index <= FEEDBACK && !seen[index]) {
            seen[index] = true;
            read(index);
        }
    }

    private void read(int index) {
        if (index <= FEEDBACK) {
            List.<Runnable>of(bookTab::load, () -> {}, bidsTab::load, feedbackTab::load)
                    .get(index)
                    .run();
        }
    }

    private void opened(OpenBook now) {
        book.setText(Messages.of("shelf.file", now.file().toAbsolutePath().normalize()));
        book.setToolTipText(book.getText());
        if (!now.faults().isEmpty()) {
            failed(String.join(
                    "\n", now.faults().stream().map(fault -> fault.text()).toList()));
        }
    }

    private void bookMoved(LibraryContext reach) {
        bookTab.load();
        reach.bookMoved();
    }

    private void failed(String why) {
        notice.say(Messages.of("shelf.failed", why));
    }

    private void showBusy() {
        busy.setText(isIdle() ? " " : Messages.of("shelf.busy"));
    }

    NoticeBar notice() {
        return notice;
    }

    /** Whether nothing is being read or written. */
    public boolean isIdle() {
        return counter.isIdle();
    }

    /** Goes on when what is being written is written to its end. */
    public void afterAll(Runnable then) {
        work.afterAll(() -> lessons.afterAll(then));
    }

    /** Ends it. */
    public void leave() {
        List.of(work, uses, bids, lessons).forEach(BackgroundTasks::stop);
        dispose();
    }
}
