// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.bids.BidRow;
import spadework.bids.BidStatus;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.ReadOnlyTable;
import spadework.form.kit.TypingPause;
import spadework.form.kit.WordChoice;
import spadework.form.kit.WorkCounter;
import spadework.office.files.JobsHome;
import spadework.office.portfolio.BidsService;

/** All bids of the folder, found by words; one opens by Enter, is copied for another customer, or priced anew. */
public final class BidsTab extends JPanel {
    /** How long after a key the bids are searched, in milliseconds. */
    private static final int PAUSE = 250;

    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final StandaloneField words = new StandaloneField("bids.find", "");
    private final StandaloneField day;
    private final JComboBox<WordChoice> standing = new JComboBox<>(Stream.concat(
                    Stream.of(new WordChoice("", Messages.of("bids.any"))),
                    Stream.of(BidStatus.values())
                            .map(one -> new WordChoice(one.name(), Messages.of("standing." + one))))
            .toArray(WordChoice[]::new));
    private final JLabel message = PlainText.of(new JLabel(" "));
    private final JTextArea unread = LibraryControls.lines("library.unread");
    private final ReadOnlyTable<BidRow> results;
    private final TypingPause pause;

    BidsTab(LibraryContext context, BackgroundTasks tasks, BackgroundTasks looking, WorkCounter counter) {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill][][]"));
        this.context = context;
        this.tasks = looking;
        pause = new TypingPause(PAUSE, counter, this::load);
        day = new StandaloneField("bids.on", context.today().toString());
        results = new ReadOnlyTable<>("library.bids", columns(() -> day.day().orElse(context.today())));
        LabeledControl look = new LabeledControl(Messages.of("bids.standing"), false, standing, standing, "");
        standing.setName("bids.standing");
        PlainText.inList(standing);
        standing.addActionListener(event -> load());
        words.onTyped(pause::restart);
        day.onTyped(pause::restart);
        KeyBindings.inside(words.field(), "DOWN", () -> results.table().requestFocusInWindow());
        KeyBindings.inside(words.field(), "ENTER", this::load);
        message.setName("bids.text");
        unread.setVisible(false);
        results.onOpened(row -> context.open(Path.of(row.place())));
        CopyBidPane copy = new CopyBidPane(context, tasks, this::load);
        RepriceBidPane reprice = new RepriceBidPane(context, tasks, this::load);
        results.onChosen(() -> {
            results.chosen().ifPresentOrElse(copy::show, copy::clear);
            results.chosen().ifPresentOrElse(reprice::show, reprice::clear);
        });
        JPanel top = new JPanel(
                new MigLayout("insets 2, gap 8, fillx, novisualpadding", "[grow,fill][160!,fill][120!,fill][]"));
        top.add(words.panel(), "top");
        top.add(look.panel(), "top");
        top.add(day.panel(), "top");
        top.add(LibraryControls.button("library.folder", this::choose), "bottom");
        JTabbedPane below = new JTabbedPane();
        below.setName("bids.below");
        below.getAccessibleContext().setAccessibleName(Messages.of("bids.below"));
        below.addTab(Messages.of("bids.copy"), copy);
        below.addTab(Messages.of("bids.reprice"), reprice);
        add(top);
        add(message, "wmin 80");
        add(results.pane(), "hmin 80, wmin 80");
        add(unread, "wmin 80");
        add(below, "h 264!, wmin 80");
        context.onTree(this::load);
    }

    private interface Day {
        LocalDate get();
    }

    private static List<ReadOnlyTable.Column<BidRow>> columns(Day day) {
        return List.of(
                ReadOnlyTable.Column.text("library.bids.number", 3, BidRow::number),
                ReadOnlyTable.Column.text("library.bids.standing", 3, row -> Messages.of("standing." + row.standing())),
                ReadOnlyTable.Column.figure(
                        "library.bids.issued", 3, row -> row.issued().toString(), BidRow::issued),
                ReadOnlyTable.Column.figure(
                        "library.bids.until",
                        4,
                        row -> until(row, day.get()),
                        row -> row.validUntil().orElse(LocalDate.MIN)),
                ReadOnlyTable.Column.figure("library.bids.age", 2, row -> Long.toString(row.age()), BidRow::age),
                ReadOnlyTable.Column.figure(
                        "library.bids.total", 3, row -> row.total().text(), BidRow::total),
                ReadOnlyTable.Column.figure(
                        "library.bids.margin",
                        2,
                        row -> row.margin().map(share -> share + "%").orElse(""),
                        row -> row.margin().orElse(BigDecimal.ZERO)),
                ReadOnlyTable.Column.text("library.bids.customer", 6, BidRow::customer),
                ReadOnlyTable.Column.text("library.bids.title", 8, BidRow::title));
    }

    private static String until(BidRow row, LocalDate on) {
        return row.validUntil()
                .map(last -> row.isExpiredOn(on) ? Messages.of("library.bids.over", last) : last.toString())
                .orElse("");
    }

    StandaloneField words() {
        return words;
    }

    private void choose() {
        context.platform().folder(this, context.tree()).ifPresent(context::tree);
    }

    private static BidsService.Found<BidRow> rows(JobsHome home, Path tree, LocalDate on, BidsService.Wanted wanted)
            throws IOException {
        home.refreshAll(tree);
        return BidsService.rows(tree, on, wanted);
    }

    /** Reads the bids anew. */
    void load() {
        pause.stop();
        if (!day.isDay(true)) {
            return;
        }
        LocalDate on = day.day().orElseThrow();
        String word = ((WordChoice) standing.getSelectedItem()).word();
        Optional<BidStatus> kind = word.isEmpty() ? Optional.empty() : Optional.of(BidStatus.valueOf(word));
        List<String> sought =
                List.of(words.text().isEmpty() ? new String[0] : words.text().split("\\s+"));
        Path tree = context.tree();
        message.setText(Messages.of("bids.looking", tree));
        BidsService.Wanted wanted = new BidsService.Wanted(kind, sought);
        tasks.latest("bids", () -> rows(context.home(), tree, on, wanted), found -> {
            results.show(found.rows(), BidRow::place);
            message.setText(Messages.of("bids.found", found.rows().size(), tree));
            LibraryControls.say(unread, String.join("\n", found.unread()));
            unread.setVisible(!found.unread().isEmpty());
            revalidate();
        });
    }
}
