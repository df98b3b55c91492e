// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.bids.BidRow;
import spadework.bids.LineMove;
import spadework.bids.Repricing;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.Messages;
import spadework.form.kit.ReadOnlyTable;
import spadework.money.Dollars;
import spadework.office.portfolio.RepriceService;
import spadework.office.portfolio.RepriceService.Moves;
import spadework.pricebook.ItemChange;
import spadework.pricing.PricedLine;

/** Prices an old bid with the books of now: each line that moves, with the reason; saved only when asked for. */
public final class RepriceBidPane extends JPanel {
    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final Runnable saved;
    private final StandaloneField day;
    private final StandaloneField start = new StandaloneField("reprice.start", "");
    private final StandaloneField finish = new StandaloneField("reprice.finish", "");
    private final ReadOnlyTable<Moved> results = new ReadOnlyTable<>(
            "reprice.moves",
            List.of(
                    ReadOnlyTable.Column.text("reprice.code", 3, Moved::code),
                    ReadOnlyTable.Column.text("reprice.section", 4, Moved::section),
                    ReadOnlyTable.Column.text("reprice.was", 5, Moved::was),
                    ReadOnlyTable.Column.text("reprice.is", 5, Moved::is),
                    ReadOnlyTable.Column.figure(
                            "reprice.difference", 3, row -> signed(row.difference()), Moved::difference),
                    ReadOnlyTable.Column.text("reprice.why", 8, Moved::why)));
    private final JTextArea message = LibraryControls.lines("reprice.text");
    private final JButton look = LibraryControls.button("reprice.look", this::look);
    private final JButton save = LibraryControls.button("reprice.save", this::save);
    private Optional<BidRow> bid = Optional.empty();

    /** A row: a line that moves, the rest, or the total. */
    private record Moved(String code, String section, String was, String is, Dollars difference, String why) {}

    RepriceBidPane(LibraryContext context, BackgroundTasks tasks, Runnable saved) {
        super(new MigLayout(
                "insets 8, gap 8, fill", "[130!,fill][160!,fill][160!,fill][][][grow,fill]", "[][grow,fill]"));
        this.context = context;
        this.tasks = tasks;
        this.saved = saved;
        day = new StandaloneField("reprice.on", context.today().toString());
        add(day.panel(), "top");
        add(start.panel(), "top");
        add(finish.panel(), "top");
        add(look, "top, gaptop 18");
        add(save, "top, gaptop 18");
        add(new JScrollPane(message), "h 58!, wmin 80, wrap");
        add(results.pane(), "span 6, hmin 60, wmin 80");
        day.onTyped(this::forget);
        clear();
    }

    void show(BidRow chosen) {
        boolean same = bid.map(BidRow::place).filter(chosen.place()::equals).isPresent();
        bid = Optional.of(chosen);
        if (!same) {
            begin(Messages.of("reprice.of", chosen.number()));
        }
    }

    /** No bid is chosen. */
    void clear() {
        bid = Optional.empty();
        begin("");
    }

    private void begin(String words) {
        look.setEnabled(bid.isPresent());
        results.show(List.of(), row -> row);
        LibraryControls.say(message, words);
        forget();
    }

    private void forget() {
        save.setEnabled(false);
    }

    private void look() {
        if (!day.isDay(true) || bid.isEmpty()) {
            return;
        }
        BidRow asked = bid.get();
        LocalDate on = day.day().orElseThrow();
        tasks.latest("moves", () -> new RepriceService().moves(Path.of(asked.place()), on), moves -> {
            if (bid.filter(asked::equals).isPresent()) {
                tell(asked, on, moves);
            }
        });
    }

    private void tell(BidRow asked, LocalDate on, Moves moves) {
        if (moves.moved().isEmpty()) {
            results.show(List.of(), row -> row);
            LibraryControls.say(message, String.join("\n", moves.refused()));
            return;
        }
        Repricing moved = moves.moved().get();
        List<Moved> rows =
                new ArrayList<>(moved.moves().stream().map(RepriceBidPane::row).toList());
        rows.add(new Moved("", Messages.of("reprice.rest"), "", "", moved.rest(), ""));
        rows.add(new Moved(
                "",
                Messages.of("reprice.total"),
                moved.before().text(),
                moved.after().text(),
                moved.difference(),
                Messages.of("reprice.days", moves.was().orElseThrow(), on)));
        results.show(rows, row -> row);
        LibraryControls.say(
                message,
                Messages.of("reprice.sum", asked.number(), moved.moves().size(), signed(moved.difference())));
        save.setEnabled(true);
    }

    private static Moved row(LineMove move) {
        String causes = move.causes().stream()
                .map(cause -> Messages.of("cause." + cause))
                .collect(Collectors.joining(", "));
        String changes = move.changes().stream().map(RepriceBidPane::described).collect(Collectors.joining("; "));
        return new Moved(
                move.line().code(),
                move.line().section().name(),
                move.before().map(RepriceBidPane::described).orElse(Messages.of("library.nothing")),
                move.after().map(RepriceBidPane::described).orElse(Messages.of("library.nothing")),
                move.difference(),
                changes.isEmpty() ? causes : causes + ": " + changes);
    }

    private static String described(PricedLine line) {
        return Messages.of(
                "reprice.line",
                line.quantity().toPlainString(),
                line.unit().symbol(),
                line.unitPrice().text(),
                line.price().text());
    }

    private static String described(ItemChange change) {
        return Messages.of("reprice.change", change.on(), change.reason());
    }

    private static String signed(Dollars amount) {
        return amount.isNegative() || amount.isZero() ? amount.text() : "+" + amount.text();
    }

    private void save() {
        boolean started = start.isDay(false);
        boolean finished = finish.isDay(false);
        if (!day.isDay(true) || !started || !finished || bid.isEmpty()) {
            return;
        }
        RepriceService.Dates dates = new RepriceService.Dates(day.day().orElseThrow(), start.day(), finish.day());
        Path job = Path.of(bid.get().place());
        forget();
        tasks.run(() -> context.home().step(job, () -> new RepriceService().reprice(job, dates, true)), reply -> {
            String text = reply.done()
                    ? Messages.of("reprice.saved", dates.issued())
                    : Messages.of(
                            "reprice.days.needed",
                            String.join(
                                    "\n",
                                    reply.err().stream()
                                            .filter(line -> !line.equals(RepriceService.NEEDS_DAYS))
                                            .toList()));
            if (reply.done()) {
                saved.run();
            }
            LibraryControls.say(message, text);
        });
    }
}
