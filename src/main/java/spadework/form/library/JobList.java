// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import spadework.bids.BidRow;
import spadework.bids.BidStatus;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.ReadOnlyTable;
import spadework.form.kit.TextChanges;
import spadework.form.kit.TypingPause;
import spadework.form.kit.WorkCounter;
import spadework.office.portfolio.BidsService;

/** The jobs of a folder, newest first: whose, what, where each stands in words, its price. */
public final class JobList {
    private static final int PAUSE = 200;

    private final Path tree;
    private final LocalDate today;
    private final WorkCounter counter = new WorkCounter();
    private final BackgroundTasks tasks;
    private final JTextField words = new JTextField();
    private final JLabel message = PlainText.of(new JLabel(" "));
    private final ReadOnlyTable<BidRow> rows;
    private final TypingPause pause;

    /** @param open called with the job that somebody chose */
    public JobList(Path tree, LocalDate today, Consumer<Path> open) {
        this.tree = tree;
        this.today = today;
        tasks = new BackgroundTasks("jobs", counter, why -> message.setText(FailureMessages.of(why)));
        pause = new TypingPause(PAUSE, counter, this::load);
        rows = new ReadOnlyTable<>(
                "home.jobs",
                List.of(
                        ReadOnlyTable.Column.text("home.customer", 5, BidRow::customer),
                        ReadOnlyTable.Column.text("home.what", 6, BidRow::title),
                        ReadOnlyTable.Column.text("home.stands", 5, this::standing),
                        ReadOnlyTable.Column.figure(
                                "home.price", 3, row -> row.total().text(), BidRow::total),
                        ReadOnlyTable.Column.figure(
                                "home.on", 3, row -> row.issued().toString(), BidRow::issued),
                        ReadOnlyTable.Column.text("home.number", 2, BidRow::number)));
        rows.onOpened(row -> open.accept(Path.of(row.place())));
        words.setName("home words");
        words.putClientProperty("JTextField.placeholderText", Messages.of("home.find"));
        words.getAccessibleContext().setAccessibleName(Messages.of("home.find"));
        TextChanges.in(words, pause::restart);
        KeyBindings.inside(words, "DOWN", () -> rows.table().requestFocusInWindow());
        KeyBindings.inside(words, "ENTER", () -> rows.chosen().ifPresent(row -> open.accept(Path.of(row.place()))));
        message.setName("home text");
    }

    /** Where a job stands, in words. */
    private String standing(BidRow row) {
        if (row.standing() == BidStatus.ISSUED && row.validUntil().isPresent()) {
            long left = today.until(row.validUntil().get(), ChronoUnit.DAYS);
            return left < 0 ? Messages.of("home.over") : Messages.of("home.left", left);
        }
        return Messages.of("home." + row.standing());
    }

    public JComponent panel() {
        JPanel panel =
                new JPanel(new MigLayout("insets 8 16 16 16, gap 6, fill, wrap 1", "[grow,fill]", "[][grow,fill][]"));
        panel.add(words);
        panel.add(rows.pane(), "hmin 120, wmin 200");
        panel.add(message);
        return panel;
    }

    public JTextField words() {
        return words;
    }

    /** Reads the jobs anew. */
    public void load() {
        pause.stop();
        List<String> sought = words.getText().isBlank()
                ? List.of()
                : List.of(words.getText().strip().split("\\s+"));
        message.setText(Messages.of("bids.looking", tree));
        tasks.latest(
                "jobs",
                () -> BidsService.rows(tree, today, new BidsService.Wanted(Optional.empty(), sought)),
                found -> {
                    rows.show(
                            found.rows().stream()
                                    .sorted(Comparator.comparing(BidRow::issued).reversed())
                                    .toList(),
                            BidRow::place);
                    message.setText(Messages.of("home.found", found.rows().size(), tree));
                });
    }

    public boolean isIdle() {
        return counter.isIdle();
    }

    public void stop() {
        tasks.stop();
    }
}
