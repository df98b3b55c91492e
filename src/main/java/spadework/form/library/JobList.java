// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import spadework.bids.BidRow;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.ReadOnlyTable;
import spadework.form.kit.TextChanges;
import spadework.form.kit.TypingPause;
import spadework.form.kit.WorkCounter;
import spadework.form.session.OfficeWatch;
import spadework.money.Dollars;
import spadework.office.files.JobsHome;
import spadework.office.portfolio.BidsService;

/**
 * The jobs of a folder or an office, newest first: whose, what, where each stands in words, its price. Those of an
 * office are read anew every few seconds, as others work on them too.
 */
public final class JobList {
    private static final int PAUSE = 200;
    /** Of an office so many are shown, those that changed last; more are found by words. */
    private static final int MOST = 50;

    private final Path tree;
    private final LocalDate today;
    private final WorkCounter counter = new WorkCounter();
    private final BackgroundTasks tasks;
    private final JTextField words = new JTextField();
    private final JLabel message = PlainText.of(new JLabel(" "));
    private final ReadOnlyTable<HomeRow> rows;
    private final TypingPause pause;
    private final JobsHome home;
    private final Timer timer = new Timer(OfficeWatch.EVERY, event -> loadAgain());
    private List<HomeRow> shown = List.of();
    private final Map<Path, String> states = new HashMap<>();
    private final Map<Path, HomeRow> read = new HashMap<>();

    /** @param open called with the job that somebody chose */
    public JobList(JobsHome home, Path tree, LocalDate today, Consumer<Path> open) {
        this.home = home;
        this.tree = tree;
        this.today = today;
        tasks = new BackgroundTasks("jobs", counter, why -> message.setText(FailureMessages.of(why)));
        pause = new TypingPause(PAUSE, counter, this::load);
        rows = new ReadOnlyTable<>(
                "home.jobs",
                List.of(
                        ReadOnlyTable.Column.text("home.customer", 5, HomeRow::customer),
                        ReadOnlyTable.Column.text("home.what", 6, HomeRow::what),
                        ReadOnlyTable.Column.text("home.stands", 5, HomeRow::stands),
                        ReadOnlyTable.Column.text("home.waits", 5, HomeRow::waits),
                        ReadOnlyTable.Column.figure(
                                "home.price",
                                3,
                                row -> row.price().map(Dollars::text).orElse(""),
                                row -> row.price().orElse(Dollars.ZERO)),
                        ReadOnlyTable.Column.text(
                                "home.on", 3, row -> row.issued().toString()),
                        ReadOnlyTable.Column.text("home.number", 2, HomeRow::number)));
        rows.onOpened(row -> open.accept(row.file()));
        words.setName("home words");
        words.putClientProperty("JTextField.placeholderText", Messages.of("home.find"));
        words.getAccessibleContext().setAccessibleName(Messages.of("home.find"));
        TextChanges.in(words, pause::restart);
        KeyBindings.inside(words, "DOWN", () -> rows.table().requestFocusInWindow());
        KeyBindings.inside(words, "ENTER", () -> rows.chosen().ifPresent(row -> open.accept(row.file())));
        message.setName("home text");
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
        message.setText(Messages.of("bids.looking", tree));
        if (home.isShared(tree)) {
            timer.start();
        }
        read();
    }

    private void loadAgain() {
        if (isIdle()) {
            read();
        }
    }

    private void read() {
        pause.stop();
        String typed = words.getText().strip();
        tasks.latest("jobs", () -> found(typed), this::show);
    }

    private List<HomeRow> found(String typed) throws IOException {
        if (home.isShared(tree)) {
            return ofOffice(home.found(typed, MOST));
        }
        List<String> sought = typed.isEmpty() ? List.of() : List.of(typed.split("\\s+"));
        BidsService.Wanted wanted = new BidsService.Wanted(Optional.empty(), sought);
        BidsService.Found<BidRow> bids = BidsService.rows(tree, today, wanted);
        List<HomeRow> all = new ArrayList<>(HomeRow.of(bids.rows(), List.of(), today));
        // What words are looked for in a job without a price is what can be read of it.
        HomeRow.of(List.of(), bids.unpriced(), today).stream()
                .filter(row -> row.holds(sought))
                .forEach(all::add);
        return HomeRow.newestFirst(all);
    }

    /** Only what changed since it was looked at last is priced anew; in the background, by one task at a time. */
    private List<HomeRow> ofOffice(List<JobsHome.FoundJob> found) {
        List<Path> changed = found.stream()
                .filter(job -> !job.state().equals(states.get(job.file())))
                .map(JobsHome.FoundJob::file)
                .toList();
        List<BidRow> priced =
                BidsService.rows(changed, today, BidsService.Wanted.ALL).rows();
        changed.forEach(read::remove);
        HomeRow.of(priced, changed, today).forEach(row -> read.put(row.file(), row));
        found.forEach(job -> states.put(job.file(), job.state()));
        return HomeRow.newestFirst(found.stream()
                .flatMap(job -> Optional.ofNullable(read.get(job.file())).stream())
                .toList());
    }

    private void show(List<HomeRow> found) {
        // The same rows again would take a list that somebody scrolled back to its chosen row.
        if (!found.equals(shown)) {
            shown = found;
            rows.show(found, HomeRow::file);
        }
        message.setText(
                home.isShared(tree) && found.size() == MOST
                        ? Messages.of("home.newest", found.size(), home.called())
                        : Messages.of("home.found", found.size(), home.called().isEmpty() ? tree : home.called()));
    }

    public boolean isIdle() {
        return counter.isIdle();
    }

    public void stop() {
        timer.stop();
        tasks.stop();
    }
}
