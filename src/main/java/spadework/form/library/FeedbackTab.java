// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.feedback.FeedbackSeason;
import spadework.feedback.RateRule;
import spadework.feedback.Suggestion;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.ReadOnlyTable;
import spadework.form.kit.WordChoice;
import spadework.money.Dollars;
import spadework.office.files.JobsHome;
import spadework.office.portfolio.FeedbackService;
import spadework.office.portfolio.FeedbackService.Lesson;

/** What closed jobs really took against the estimate, and the rates that follow, each taken or left. */
public final class FeedbackTab extends JPanel {
    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final Runnable moved;
    private final JRadioButton season = new JRadioButton(Messages.of("feedback.season"), true);
    private final JRadioButton one = new JRadioButton(Messages.of("feedback.one"));
    private final JComboBox<WordChoice> rule = new JComboBox<>(Stream.of(RateRule.values())
            .map(each -> new WordChoice(each.name(), Messages.of("feedback.rule." + each)))
            .toArray(WordChoice[]::new));
    private final StandaloneField day;
    private final JTextArea message = LibraryControls.lines("feedback.text");
    private final JTextArea evidence = LibraryControls.lines("feedback.evidence");
    private final JButton accept = LibraryControls.button("feedback.accept", this::accept);
    private final JButton report = LibraryControls.button("feedback.report", this::report);
    private final ReadOnlyTable<FeedbackSeason.Total> totals = new ReadOnlyTable<>(
            "feedback.totals",
            List.of(
                    ReadOnlyTable.Column.text("feedback.code", 3, FeedbackSeason.Total::code),
                    ReadOnlyTable.Column.text("feedback.name", 8, FeedbackSeason.Total::name),
                    ReadOnlyTable.Column.figure(
                            "feedback.jobs", 2, row -> Integer.toString(row.jobs()), FeedbackSeason.Total::jobs),
                    ReadOnlyTable.Column.figure(
                            "feedback.estimate", 3, row -> row.estimate().text(), FeedbackSeason.Total::estimate),
                    ReadOnlyTable.Column.figure(
                            "feedback.actual", 3, row -> row.actual().text(), FeedbackSeason.Total::actual),
                    ReadOnlyTable.Column.figure(
                            "feedback.quantity",
                            3,
                            row -> signed(row.quantityError()),
                            FeedbackSeason.Total::quantityError),
                    ReadOnlyTable.Column.figure(
                            "feedback.production",
                            3,
                            row -> signed(row.productionError()),
                            FeedbackSeason.Total::productionError),
                    ReadOnlyTable.Column.figure(
                            "feedback.price", 3, row -> signed(row.priceError()), FeedbackSeason.Total::priceError)));
    private final ReadOnlyTable<Suggestion> rates = new ReadOnlyTable<>(
            "feedback.rates",
            List.of(
                    ReadOnlyTable.Column.text("feedback.code", 3, Suggestion::code),
                    ReadOnlyTable.Column.text("feedback.what", 4, row -> ItemValuesModel.name(row.what())),
                    ReadOnlyTable.Column.text("feedback.from", 3, Suggestion::from),
                    ReadOnlyTable.Column.text("feedback.to", 3, Suggestion::to),
                    ReadOnlyTable.Column.figure(
                            "feedback.jobs",
                            2,
                            row -> Integer.toString(row.evidence().size()),
                            row -> row.evidence().size())));
    private boolean loaded;

    /** @param moved called when a rate was taken into the book */
    FeedbackTab(LibraryContext context, BackgroundTasks tasks, Runnable moved) {
        super(new MigLayout(
                "insets 8 12 8 12, gap 6, fill, wrap 2, hidemode 3",
                "[56%!,fill][grow,fill]",
                "[][][grow 55,fill][][grow 45,fill][]"));
        this.context = context;
        this.tasks = tasks;
        this.moved = moved;
        day = new StandaloneField("feedback.on", context.today().toString());
        ButtonGroup scope = new ButtonGroup();
        List.of(season, one).forEach(scope::add);
        season.setName("feedback.season");
        one.setName("feedback.one");
        rule.setName("feedback.rule");
        rule.getAccessibleContext().setAccessibleName(Messages.of("feedback.rule"));
        PlainText.inList(rule);
        season.addActionListener(event -> load());
        one.addActionListener(event -> load());
        rule.addActionListener(event -> load());
        add(
                LibraryControls.row(List.of(season, one, LibraryControls.button("library.folder", this::choose), rule)),
                "span 2");
        add(message, "span 2, wmin 80");
        add(totals.pane(), "span 2, hmin 80, wmin 80");
        add(LibraryControls.described("feedback.rates.text"), "span 2, wmin 80");
        add(rates.pane(), "hmin 60, wmin 80");
        add(new JScrollPane(evidence), "hmin 60, wmin 80");
        JPanel last = new JPanel(new MigLayout("insets 2, gap 8, novisualpadding", "[120!,fill][][]push[]"));
        last.add(day.panel(), "top");
        last.add(accept, "top, gaptop 18");
        last.add(report, "top, gaptop 18");
        add(last, "span 2");
        rates.onChosen(this::showEvidence);
        context.onTree(() -> {
            if (loaded) {
                load();
            }
        });
        showEvidence();
    }

    private static String signed(Dollars amount) {
        return amount.isNegative() || amount.isZero() ? amount.text() : "+" + amount.text();
    }

    private void choose() {
        context.platform().folder(this, context.tree()).ifPresent(context::tree);
    }

    /** What is looked at: the job on screen as its file has it, or all jobs of the folder. */
    private Path tree() {
        return one.isSelected() ? context.job() : context.tree();
    }

    private interface Service {
        FeedbackService open() throws IOException;
    }

    /** What reads the jobs as they are chosen now; it is opened beside the window's thread. */
    private Service service() {
        Path tree = tree();
        Path job = context.job();
        RateRule chosen = RateRule.valueOf(((WordChoice) rule.getSelectedItem()).word());
        Path folder = tree.equals(job) ? tree.getParent() : tree;
        JobsHome home = context.home();
        return () -> {
            home.refreshAll(tree);
            return new FeedbackService(tree, LibraryContext.bookOf(folder, job), chosen);
        };
    }

    /** Reads the jobs anew. */
    void load() {
        loaded = true;
        Path tree = tree();
        Service service = service();
        LibraryControls.say(message, Messages.of("feedback.looking", tree));
        tasks.latest("lesson", () -> service.open().lesson(), lesson -> show(tree, lesson));
    }

    private void show(Path tree, Lesson lesson) {
        List<FeedbackSeason.Total> rows = lesson.season().totals();
        totals.show(rows, FeedbackSeason.Total::code);
        rates.show(lesson.suggestions(), row -> row.code() + row.what());
        String text = rows.isEmpty()
                ? Messages.of("feedback.none", tree)
                : Messages.of(
                        "feedback.sum",
                        lesson.season().jobs().size(),
                        sum(rows, FeedbackSeason.Total::estimate).text(),
                        sum(rows, FeedbackSeason.Total::actual).text(),
                        signed(sum(rows, FeedbackSeason.Total::quantityError)),
                        signed(sum(rows, FeedbackSeason.Total::productionError)),
                        signed(sum(rows, FeedbackSeason.Total::priceError)));
        LibraryControls.say(
                message,
                Stream.concat(Stream.of(text), lesson.unread().stream()).collect(Collectors.joining("\n")));
        report.setEnabled(!rows.isEmpty());
        revalidate();
    }

    private interface Amount {
        Dollars of(FeedbackSeason.Total row);
    }

    private static Dollars sum(List<FeedbackSeason.Total> rows, Amount amount) {
        return Dollars.total(rows.stream().map(amount::of).toList());
    }

    private void showEvidence() {
        Optional<Suggestion> chosen = rates.chosen();
        accept.setEnabled(chosen.isPresent());
        LibraryControls.say(
                evidence,
                chosen.map(rate -> Messages.of(
                                "feedback.evidence.of",
                                rate.code(),
                                rate.name(),
                                ItemValuesModel.name(rate.what()),
                                rate.from(),
                                rate.to(),
                                Messages.of("feedback.rule." + rate.rule()),
                                rate.evidence().stream()
                                        .map(job -> Messages.of(
                                                "feedback.evidence.job",
                                                job.job(),
                                                job.finished(),
                                                job.soil(),
                                                job.rate()))
                                        .collect(Collectors.joining("\n"))))
                        .orElse(""));
    }

    private void accept() {
        if (!day.isDay(true) || rates.chosen().isEmpty()) {
            return;
        }
        Suggestion rate = rates.chosen().get();
        LocalDate on = day.day().orElseThrow();
        Service service = service();
        accept.setEnabled(false);
        Path job = context.job();
        tasks.run(() -> context.home().step(job, () -> service.open().accept(rate, on)), reply -> {
            LibraryControls.say(
                    evidence,
                    reply.done()
                            ? Messages.of("feedback.accepted", String.join("\n", reply.out()))
                            : String.join("\n", reply.err()));
            if (reply.done()) {
                moved.run();
                load();
            }
        });
    }

    private void report() {
        Service service = service();
        if (!day.isDay(true)) {
            return;
        }
        LocalDate on = day.day().orElseThrow();
        context.platform()
                .folder(this, context.tree())
                .ifPresent(folder -> tasks.run(
                        () -> service.open().print(folder, on, context.templates()),
                        reply -> LibraryControls.say(
                                message,
                                reply.out().isEmpty()
                                        ? String.join("\n", reply.err())
                                        : Messages.of("feedback.printed", String.join(", ", reply.out())))));
    }
}
