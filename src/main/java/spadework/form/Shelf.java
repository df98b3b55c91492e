package spadework.form;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import spadework.office.OpenBook;

/**
 * The shelf of the office, in a window beside the job's: the price book, old bids, what closed jobs teach, and prices
 * with something otherwise. All of it is the contractor's alone.
 */
final class Shelf extends JFrame {
    private static final int BOOK = 0;
    private static final int BIDS = 2;
    private static final int FEEDBACK = 3;

    private final Notice notice = new Notice();
    private final JLabel book = PlainText.of(new JLabel(" "));
    private final JLabel busy = new JLabel(" ");
    private final JTabbedPane tabs = new JTabbedPane();
    private final Errands work = new Errands("shelf", this::failed, this::showBusy);
    private final Errands uses = new Errands("shelf uses", this::failed, this::showBusy);
    private final Errands bids = new Errands("shelf bids", this::failed, this::showBusy);
    private final Errands lessons = new Errands("shelf lessons", this::failed, this::showBusy);
    private final BookTab bookTab;
    private final BidsTab bidsTab;
    private final FeedbackTab feedbackTab;
    private final boolean[] seen = new boolean[FEEDBACK + 1];

    Shelf(Reach reach) {
        super(Words.of("shelf.title"));
        bookTab = new BookTab(reach, work, uses, this::opened);
        bidsTab = new BidsTab(reach, work, bids);
        feedbackTab = new FeedbackTab(reach, lessons, () -> bookMoved(reach));
        tabs.setName("shelf.tabs");
        tabs.getAccessibleContext().setAccessibleName(Words.of("shelf.tabs"));
        tab("book", bookTab);
        tab("sheets", new SheetsTab(reach, work, () -> bookMoved(reach)));
        tab("bids", bidsTab);
        tab("feedback", feedbackTab);
        tab("otherwise", new OtherwiseTab(reach, lessons));
        tabs.addChangeListener(event -> showTab());
        JPanel below = new JPanel(new MigLayout("insets 4 12 6 12, gap 16, fillx", "[][grow,fill][]"));
        below.add(new JLabel(Words.of("shelf.own")));
        book.setName("shelf.file");
        below.add(book, "wmin 60");
        busy.setName("shelf.busy");
        below.add(busy);
        add(notice, BorderLayout.NORTH);
        add(tabs);
        add(below, BorderLayout.SOUTH);
        Keys.anywhere(tabs, "ctrl W", () -> setVisible(false));
        Keys.anywhere(tabs, "F5", () -> read(tabs.getSelectedIndex()));
        setSize(1366, 768);
        setDefaultCloseOperation(HIDE_ON_CLOSE);
    }

    private void tab(String key, JComponent tab) {
        int index = tabs.getTabCount();
        tabs.addTab(Words.of("shelf.tab." + key), tab);
        Keys.anywhere(tabs, "ctrl " + (index + 1), () -> tabs.setSelectedIndex(index));
    }

    /** Puts one of its tabs in front. */
    void open(int index) {
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
        book.setText(Words.of("shelf.file", now.file().toAbsolutePath().normalize()));
        book.setToolTipText(book.getText());
        if (!now.faults().isEmpty()) {
            failed(String.join(
                    "\n", now.faults().stream().map(fault -> fault.text()).toList()));
        }
    }

    private void bookMoved(Reach reach) {
        bookTab.load();
        reach.bookMoved();
    }

    private void failed(String why) {
        notice.say(Words.of("shelf.failed", why));
    }

    private void showBusy() {
        busy.setText(isIdle() ? " " : Words.of("shelf.busy"));
    }

    Notice notice() {
        return notice;
    }

    /** Whether nothing is being read or written. */
    boolean isIdle() {
        return List.of(work, uses, bids, lessons).stream().allMatch(Errands::isIdle)
                && (bidsTab == null || bidsTab.isIdle());
    }

    /** Ends it; what is being written is written to its end. */
    void leave() {
        List.of(uses, bids).forEach(Errands::stop);
        List.of(work, lessons).forEach(Errands::finish);
        dispose();
    }
}
