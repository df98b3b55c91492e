package spadework.form;

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
import spadework.feedback.RateRule;
import spadework.feedback.Season;
import spadework.feedback.Suggestion;
import spadework.money.Dollars;
import spadework.office.FeedbackDesk;
import spadework.office.FeedbackDesk.Lesson;

/** What closed jobs really took against the estimate, and the rates that follow, each taken or left. */
final class FeedbackTab extends JPanel {
    private final Reach reach;
    private final Errands errands;
    private final Runnable moved;
    private final JRadioButton season = new JRadioButton(Words.of("feedback.season"), true);
    private final JRadioButton one = new JRadioButton(Words.of("feedback.one"));
    private final JComboBox<Choice> rule = new JComboBox<>(Stream.of(RateRule.values())
            .map(each -> new Choice(each.name(), Words.of("feedback.rule." + each)))
            .toArray(Choice[]::new));
    private final Slip day;
    private final JTextArea told = Plain.lines("feedback.told");
    private final JTextArea evidence = Plain.lines("feedback.evidence");
    private final JButton accept = Plain.button("feedback.accept", this::accept);
    private final JButton report = Plain.button("feedback.report", this::report);
    private final Board<Season.Total> totals = new Board<>(
            "feedback.totals",
            List.of(
                    Board.Head.text("feedback.code", 3, Season.Total::code),
                    Board.Head.text("feedback.name", 8, Season.Total::name),
                    Board.Head.figure("feedback.jobs", 2, row -> Integer.toString(row.jobs()), Season.Total::jobs),
                    Board.Head.figure(
                            "feedback.estimate", 3, row -> row.estimate().text(), Season.Total::estimate),
                    Board.Head.figure("feedback.actual", 3, row -> row.actual().text(), Season.Total::actual),
                    Board.Head.figure(
                            "feedback.quantity", 3, row -> signed(row.quantityError()), Season.Total::quantityError),
                    Board.Head.figure(
                            "feedback.production",
                            3,
                            row -> signed(row.productionError()),
                            Season.Total::productionError),
                    Board.Head.figure("feedback.price", 3, row -> signed(row.priceError()), Season.Total::priceError)));
    private final Board<Suggestion> rates = new Board<>(
            "feedback.rates",
            List.of(
                    Board.Head.text("feedback.code", 3, Suggestion::code),
                    Board.Head.text("feedback.what", 4, row -> ItemSheet.name(row.what())),
                    Board.Head.text("feedback.from", 3, Suggestion::from),
                    Board.Head.text("feedback.to", 3, Suggestion::to),
                    Board.Head.figure(
                            "feedback.jobs",
                            2,
                            row -> Integer.toString(row.evidence().size()),
                            row -> row.evidence().size())));
    private boolean loaded;

    /** @param moved called when a rate was taken into the book */
    FeedbackTab(Reach reach, Errands errands, Runnable moved) {
        super(new MigLayout(
                "insets 8 12 8 12, gap 6, fill, wrap 2, hidemode 3",
                "[56%!,fill][grow,fill]",
                "[][][grow 55,fill][][grow 45,fill][]"));
        this.reach = reach;
        this.errands = errands;
        this.moved = moved;
        day = new Slip("feedback.on", reach.today().toString());
        ButtonGroup scope = new ButtonGroup();
        List.of(season, one).forEach(scope::add);
        season.setName("feedback.season");
        one.setName("feedback.one");
        rule.setName("feedback.rule");
        rule.getAccessibleContext().setAccessibleName(Words.of("feedback.rule"));
        PlainText.inList(rule);
        season.addActionListener(event -> load());
        one.addActionListener(event -> load());
        rule.addActionListener(event -> load());
        add(Plain.row(List.of(season, one, Plain.button("shelf.folder", this::choose), rule)), "span 2");
        add(told, "span 2, wmin 80");
        add(totals.pane(), "span 2, hmin 80, wmin 80");
        add(Plain.told("feedback.rates.told"), "span 2, wmin 80");
        add(rates.pane(), "hmin 60, wmin 80");
        add(new JScrollPane(evidence), "hmin 60, wmin 80");
        JPanel last = new JPanel(new MigLayout("insets 2, gap 8, novisualpadding", "[120!,fill][][]push[]"));
        last.add(day.panel(), "top");
        last.add(accept, "top, gaptop 18");
        last.add(report, "top, gaptop 18");
        add(last, "span 2");
        rates.onChosen(this::showEvidence);
        reach.onTree(() -> {
            if (loaded) {
                load();
            }
        });
        showEvidence(Optional.empty());
    }

    private static String signed(Dollars amount) {
        return amount.isNegative() || amount.isZero() ? amount.text() : "+" + amount.text();
    }

    private void choose() {
        reach.outside().folder(this, reach.tree()).ifPresent(reach::tree);
    }

    /** What is looked at: the job on screen as its file has it, or all jobs of the folder. */
    private Path tree() {
        return one.isSelected() ? reach.job() : reach.tree();
    }

    private FeedbackDesk desk(Path tree, String word) throws IOException {
        Path folder = tree.equals(reach.job()) ? tree.getParent() : tree;
        return new FeedbackDesk(tree, reach.bookOf(folder), RateRule.valueOf(word));
    }

    private String word() {
        return ((Choice) rule.getSelectedItem()).word();
    }

    /** Reads the jobs anew. */
    void load() {
        loaded = true;
        Path tree = tree();
        String word = word();
        Plain.say(told, Words.of("feedback.looking", tree));
        errands.look("lesson", () -> desk(tree, word).lesson(), lesson -> show(tree, lesson));
    }

    private void show(Path tree, Lesson lesson) {
        List<Season.Total> rows = lesson.season().totals();
        totals.show(rows, Season.Total::code);
        rates.show(lesson.suggestions(), row -> row.code() + row.what());
        String text = rows.isEmpty()
                ? Words.of("feedback.none", tree)
                : Words.of(
                        "feedback.sum",
                        lesson.season().jobs().size(),
                        sum(rows, Season.Total::estimate).text(),
                        sum(rows, Season.Total::actual).text(),
                        signed(sum(rows, Season.Total::quantityError)),
                        signed(sum(rows, Season.Total::productionError)),
                        signed(sum(rows, Season.Total::priceError)));
        Plain.say(told, Stream.concat(Stream.of(text), lesson.unread().stream()).collect(Collectors.joining("\n")));
        report.setEnabled(!rows.isEmpty());
        revalidate();
    }

    private interface Amount {
        Dollars of(Season.Total row);
    }

    private static Dollars sum(List<Season.Total> rows, Amount amount) {
        return Dollars.total(rows.stream().map(amount::of).toList());
    }

    private void showEvidence(Optional<Suggestion> chosen) {
        accept.setEnabled(chosen.isPresent());
        Plain.say(
                evidence,
                chosen.map(rate -> Words.of(
                                "feedback.evidence.of",
                                rate.code(),
                                rate.name(),
                                ItemSheet.name(rate.what()),
                                rate.from(),
                                rate.to(),
                                Words.of("feedback.rule." + rate.rule()),
                                rate.evidence().stream()
                                        .map(job -> Words.of(
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
        Path tree = tree();
        String word = word();
        accept.setEnabled(false);
        errands.run(() -> desk(tree, word).accept(rate, on), reply -> {
            Plain.say(
                    evidence,
                    reply.done()
                            ? Words.of("feedback.accepted", String.join("\n", reply.out()))
                            : String.join("\n", reply.err()));
            if (reply.done()) {
                moved.run();
                load();
            }
        });
    }

    private void report() {
        Path tree = tree();
        String word = word();
        if (!day.isDay(true)) {
            return;
        }
        LocalDate on = day.day().orElseThrow();
        reach.outside()
                .folder(this, reach.tree())
                .ifPresent(folder -> errands.run(
                        () -> desk(tree, word).print(folder, on, reach.templates()),
                        reply -> Plain.say(
                                told,
                                reply.out().isEmpty()
                                        ? String.join("\n", reply.err())
                                        : Words.of("feedback.printed", String.join(", ", reply.out())))));
    }
}
