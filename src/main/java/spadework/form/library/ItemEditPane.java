// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.WordChoice;
import spadework.office.book.OpenBook;
import spadework.office.reply.Reply;
import spadework.pricebook.LineItem;

/** An item of the book with all its values, to be changed, given up, or taken as the start of another. */
public final class ItemEditPane extends JPanel {
    private final JLabel head = PlainText.of(new JLabel(" "));
    private final JTextArea from = LibraryControls.described("library.from");
    private final JCheckBox every = new JCheckBox(Messages.of("library.every"));
    private final ItemValuesModel sheet = new ItemValuesModel();
    private final ItemValuesTable grid;
    private final StandaloneField code = new StandaloneField("library.code", "");
    private final StandaloneField day;
    private final StandaloneField reason = new StandaloneField("library.reason", "");
    private final JTextArea moves = LibraryControls.lines("library.moves");
    private final JButton write;
    private final Consumer<BookEdit> trial;
    private Optional<LineItem> item = Optional.empty();
    private Optional<OpenBook.Entry> entry = Optional.empty();
    private boolean fresh;
    private boolean showing;
    private Optional<BookEdit> pending = Optional.empty();

    /**
     * Makes the pane.
     *
     * @param named what the company has by name for a place of an item
     * @param trial asks what a step would move; {@link #described} gets the answer
     * @param writing writes a step that was told
     */
    ItemEditPane(
            LocalDate today,
            Function<String, List<WordChoice>> named,
            Consumer<BookEdit> trial,
            Consumer<BookEdit> writing) {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill][][][]"));
        this.trial = trial;
        grid = new ItemValuesTable(sheet, named);
        day = new StandaloneField("library.on", today.toString());
        head.putClientProperty("FlatLaf.styleClass", "h4");
        head.setName("library.head");
        every.setName("library.every");
        every.addActionListener(event -> showValues());
        write = LibraryControls.button("library.write", () -> pending.ifPresent(writing));
        JPanel top = new JPanel(new MigLayout("insets 0, gap 0, fillx", "[grow,fill][]"));
        top.add(head, "wmin 60");
        top.add(every, "wrap");
        top.add(from, "span 2, wmin 60, h 44!");
        add(top);
        code.panel().setVisible(false);
        add(code.panel(), "wmin 60");
        add(new JScrollPane(grid), "hmin 120, wmin 80");
        JPanel why = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[120!,fill][grow,fill]"));
        why.add(day.panel(), "top");
        why.add(reason.panel(), "top, wmin 60");
        add(why);
        add(LibraryControls.row(List.of(
                LibraryControls.button("library.show", this::tryIt),
                write,
                LibraryControls.button("library.retire", this::giveUp),
                LibraryControls.button("library.like", () -> begin(true)),
                LibraryControls.button("library.new", () -> begin(false)))));
        add(new JScrollPane(moves), "h 92!, wmin 80");
        sheet.addTableModelListener(event -> forget());
        List.of(code, day, reason).forEach(field -> field.onTyped(this::forget));
        clear();
    }

    /** Shows an item as it stands in the book. */
    void show(LineItem chosen, OpenBook book) {
        item = Optional.of(chosen);
        entry = Optional.ofNullable(book.entries().get(chosen.code()));
        fresh = false;
        showAll();
    }

    /** No item is chosen. */
    final void clear() {
        item = Optional.empty();
        entry = Optional.empty();
        fresh = false;
        showAll();
    }

    private void begin(boolean like) {
        fresh = true;
        if (!like) {
            item = Optional.empty();
            entry = Optional.empty();
        }
        showAll();
        code.field().setText("");
        code.field().requestFocusInWindow();
    }

    private void showAll() {
        code.panel().setVisible(fresh);
        head.setText(
                fresh
                        ? item.map(one -> Messages.of("library.head.like", one.code()))
                                .orElse(Messages.of("library.head.new"))
                        : item.map(one -> Messages.of("library.head.item", one.code(), one.name()))
                                .orElse(Messages.of("library.head.none")));
        from.setText(fresh ? "" : item.map(this::from).orElse(""));
        showValues();
        LibraryControls.say(moves, "");
        revalidate();
    }

    private String from(LineItem one) {
        String source = Messages.of(
                "library.source",
                one.source().text(),
                one.source().on(),
                one.goodUntil()
                        .map(last -> Messages.of("library.until", last))
                        .orElse(Messages.of("library.until.open")));
        String end = one.retired()
                .map(gone -> " " + Messages.of("library.retired", gone.on(), gone.reason()))
                .orElse("");
        return source
                + end
                + (entry.filter(OpenBook.Entry::bundled).isPresent() ? " " + Messages.of("library.bundled") : "");
    }

    private void showValues() {
        stopEditing();
        showing = true;
        sheet.show(entry.map(OpenBook.Entry::values).orElse(Map.of()), every.isSelected() || (fresh && item.isEmpty()));
        showing = false;
        forget();
    }

    private void stopEditing() {
        if (grid.isEditing() && !grid.getCellEditor().stopCellEditing()) {
            grid.getCellEditor().cancelCellEditing();
        }
    }

    private void forget() {
        if (!showing) {
            pending = Optional.empty();
            write.setEnabled(false);
        }
    }

    /** What goes with every step: a day and a reason; both are marked where they are missing. */
    private boolean isReasoned() {
        stopEditing();
        boolean dayFits = day.isDay(true);
        boolean reasonFits = reason.needed().isPresent();
        return dayFits && reasonFits;
    }

    private void tryIt() {
        boolean named = !fresh || code.needed().isPresent();
        if (isReasoned() && named && (fresh || item.isPresent())) {
            Map<String, String> values = sheet.changed();
            LocalDate on = day.day().orElseThrow();
            String why = reason.text();
            String own = fresh ? code.text() : item.orElseThrow().code();
            BookEdit added = item.map(LineItem::code)
                    .<BookEdit>map(like -> session -> session.addLike(like, own, values, on, why))
                    .orElse(session -> session.add(own, values, on, why));
            ask(fresh ? added : session -> session.change(own, values, on, why));
        }
    }

    private void giveUp() {
        if (item.isPresent() && !fresh && isReasoned()) {
            String own = item.get().code();
            LocalDate on = day.day().orElseThrow();
            String why = reason.text();
            ask(session -> session.retire(own, on, why));
        }
    }

    private void ask(BookEdit step) {
        pending = Optional.of(step);
        write.setEnabled(false);
        trial.accept(step);
    }

    /** Tells what a step would move; it may be written if it is the one asked for last and nothing is wrong. */
    void described(BookEdit step, Reply reply) {
        boolean moves = reply.done() && reply.out().stream().anyMatch(line -> line.contains(" → "));
        LibraryControls.say(this.moves, String.join("\n", reply.done() ? reply.out() : reply.err()));
        write.setEnabled(moves && pending.filter(asked -> asked == step).isPresent());
    }

    /** Tells what was written. */
    void written(Reply reply) {
        reason.field().setText("");
        LibraryControls.say(
                moves,
                reply.done()
                        ? Messages.of("library.written", String.join("\n", reply.out()))
                        : String.join("\n", reply.err()));
    }

    ItemValuesTable grid() {
        return grid;
    }
}
