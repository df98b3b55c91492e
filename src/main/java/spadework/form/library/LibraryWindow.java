// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.awt.BorderLayout;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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
import spadework.reason.Reason;

/**
 * The library of the office, in a window beside the job's: the price book, old bids, what closed jobs teach, and prices
 * with something otherwise. All of it is the contractor's alone.
 */
public final class LibraryWindow extends JFrame {

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
    private final Set<LibraryTab> read = EnumSet.noneOf(LibraryTab.class);

    public LibraryWindow(LibraryContext context) {
        super(Messages.of("library.title"));
        bookTab = new BookTab(context, work, uses, this::opened);
        bidsTab = new BidsTab(context, work, bids, counter);
        feedbackTab = new FeedbackTab(context, lessons, () -> bookMoved(context));
        tabs.setName("library.tabs");
        tabs.getAccessibleContext().setAccessibleName(Messages.of("library.tabs"));
        add(LibraryTab.BOOK, bookTab);
        add(LibraryTab.WORKBOOK, new WorkbookTab(context, work, () -> bookMoved(context)));
        add(LibraryTab.BIDS, bidsTab);
        add(LibraryTab.FEEDBACK, feedbackTab);
        add(LibraryTab.WHATIF, new WhatIfTab(context, lessons));
        tabs.addChangeListener(event -> showTab());
        JPanel below = new JPanel(new MigLayout("insets 4 12 6 12, gap 16, fillx", "[][grow,fill][]"));
        below.add(new JLabel(Messages.of("library.own")));
        book.setName("library.file");
        below.add(book, "wmin 60");
        busy.setName("library.busy");
        below.add(busy);
        add(notice, BorderLayout.NORTH);
        add(tabs);
        add(below, BorderLayout.SOUTH);
        KeyBindings.anywhere(tabs, "ctrl W", () -> setVisible(false));
        KeyBindings.anywhere(tabs, "F5", () -> read(shown()));
        setSize(1366, 768);
        setDefaultCloseOperation(HIDE_ON_CLOSE);
    }

    private BackgroundTasks tasks(String name) {
        return new BackgroundTasks(name, counter, why -> failed(Reason.of(why)));
    }

    private void add(LibraryTab tab, JComponent shown) {
        tabs.addTab(Messages.of("library.tab." + tab.word()), shown);
        KeyBindings.anywhere(tabs, "ctrl " + (tab.ordinal() + 1), () -> choose(tab));
    }

    private void choose(LibraryTab tab) {
        tabs.setSelectedIndex(tab.ordinal());
    }

    private LibraryTab shown() {
        return LibraryTab.values()[tabs.getSelectedIndex()];
    }

    /** Puts one of its tabs in front. */
    public void open(LibraryTab tab) {
        setVisible(true);
        toFront();
        choose(tab);
        load(LibraryTab.BOOK);
        showTab();
        JComponent first = switch (tab) {
            case BOOK -> bookTab.words().field();
            case BIDS -> bidsTab.words().field();
            default -> tabs;
        };
        SwingUtilities.invokeLater(first::requestFocusInWindow);
    }

    /** What a tab shows is read when it is first looked at. */
    private void showTab() {
        load(shown());
    }

    private void load(LibraryTab tab) {
        if (read.add(tab)) {
            read(tab);
        }
    }

    private void read(LibraryTab tab) {
        switch (tab) {
            case BOOK -> bookTab.load();
            case BIDS -> bidsTab.load();
            case FEEDBACK -> feedbackTab.load();
            case WORKBOOK, WHATIF -> {}
        }
    }

    private void opened(OpenBook now) {
        book.setText(Messages.of("library.file", now.file().toAbsolutePath().normalize()));
        book.setToolTipText(book.getText());
        if (!now.faults().isEmpty()) {
            failed(String.join(
                    "\n", now.faults().stream().map(fault -> fault.text()).toList()));
        }
    }

    private void bookMoved(LibraryContext context) {
        bookTab.load();
        context.bookMoved();
    }

    private void failed(String why) {
        notice.say(Messages.of("library.failed", why));
    }

    private void showBusy() {
        busy.setText(isIdle() ? " " : Messages.of("library.busy"));
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
