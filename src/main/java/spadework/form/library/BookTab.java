// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.awt.CardLayout;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.ReadOnlyTable;
import spadework.office.book.OpenBook;
import spadework.office.reply.Reply;
import spadework.pricebook.Assembly;
import spadework.pricebook.LineItem;

/** The price book: every item and assembly, found by words; the chosen one with all that the book and old bids say. */
public final class BookTab extends JPanel {
    private static final int USED = 2;
    private static final String ITEM = "item";
    private static final String ASSEMBLY = "assembly";

    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final StandaloneField words = new StandaloneField("library.find", "");
    private final JCheckBox retired = new JCheckBox(Messages.of("library.gone"));
    private final ReadOnlyTable<BookRow> results = new ReadOnlyTable<>(
            "library.items",
            List.of(
                    ReadOnlyTable.Column.text("library.items.code", 4, BookRow::code),
                    ReadOnlyTable.Column.text("library.items.what", 7, BookRow::name),
                    ReadOnlyTable.Column.text("library.items.unit", 2, BookRow::unit),
                    ReadOnlyTable.Column.text("library.items.costs", 6, BookRow::costs),
                    ReadOnlyTable.Column.text("library.items.until", 3, BookRow::until)));
    private final ItemEditPane pane;
    private final ItemHistoryPane past = new ItemHistoryPane();
    private final ItemUsesPane uses;
    private final JTextArea parts = LibraryControls.lines("library.parts");
    private final CardLayout cards = new CardLayout();
    private final JPanel right = new JPanel(cards);
    private final JTabbedPane about = new JTabbedPane();
    private final Consumer<OpenBook> opened;
    private Optional<OpenBook> book = Optional.empty();

    /** A row of the list: an item, or an assembly. */
    private record BookRow(
            String code,
            String name,
            String unit,
            String costs,
            String until,
            Optional<LineItem> item,
            Optional<Assembly> assembly) {}

    /** @param opened told the book whenever it was read */
    BookTab(LibraryContext context, BackgroundTasks tasks, BackgroundTasks looking, Consumer<OpenBook> opened) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.context = context;
        this.tasks = tasks;
        this.opened = opened;
        pane = new ItemEditPane(context.today(), context::named, this::trial, this::write);
        uses = new ItemUsesPane(context, looking);
        retired.setName("library.gone");
        JPanel left = new JPanel(new MigLayout("insets 8, gap 6, fill, wrap 1", "[grow,fill]", "[][][grow,fill]"));
        left.add(words.panel());
        left.add(retired);
        left.add(results.pane(), "hmin 80, wmin 80");
        about.setName("library.about");
        about.getAccessibleContext().setAccessibleName(Messages.of("library.about"));
        about.addTab(Messages.of("library.about.item"), pane);
        about.addTab(Messages.of("library.about.past"), past);
        about.addTab(Messages.of("library.about.used"), uses);
        about.addChangeListener(event -> showUses());
        JPanel bundle = new JPanel(new MigLayout("insets 8, fill", "[grow,fill]", "[grow,fill]"));
        bundle.add(parts);
        right.add(about, ITEM);
        right.add(bundle, ASSEMBLY);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, left, right);
        split.setName("library.split");
        split.getAccessibleContext().setAccessibleName(Messages.of("library.split"));
        split.setResizeWeight(0.5);
        split.setDividerLocation(676);
        split.setBorder(null);
        add(split);
        words.onTyped(this::find);
        retired.addActionListener(event -> find());
        KeyBindings.inside(words.field(), "DOWN", () -> results.step(1));
        KeyBindings.inside(words.field(), "UP", () -> results.step(-1));
        results.onChosen(this::showChosen);
        results.onOpened(row -> pane.grid().requestFocusInWindow());
    }

    StandaloneField words() {
        return words;
    }

    /** Reads the book anew and shows it. */
    void load() {
        Path job = context.job();
        tasks.latest("book", () -> OpenBook.of(LibraryContext.bookOf(job)), this::show);
    }

    private void show(OpenBook now) {
        book = Optional.of(now);
        opened.accept(now);
        find();
    }

    private void find() {
        List<String> sought =
                List.of(words.text().isEmpty() ? new String[0] : words.text().split("\\s+"));
        List<BookRow> rows = new ArrayList<>();
        book.ifPresent(one -> {
            one.items(sought, retired.isSelected()).forEach(item -> rows.add(row(item)));
            one.assemblies(sought).forEach(assembly -> rows.add(row(assembly)));
        });
        results.show(rows, BookRow::code);
    }

    private BookRow row(LineItem item) {
        List<String> costs = new ArrayList<>();
        item.material()
                .ifPresent(one -> costs.add(
                        Messages.of("library.costs.material", one.cost().text(), one.sold())));
        item.labor()
                .ifPresent(one -> costs.add(Messages.of(
                        "library.costs.labor",
                        one.perHour().toPlainString(),
                        item.unit().symbol(),
                        one.crew())));
        item.subcontract().ifPresent(one -> costs.add(Messages.of("library.costs.others", one.text())));
        item.disposal().ifPresent(one -> costs.add(Messages.of("library.costs.tipping", one.text())));
        String until = item.retired()
                .map(gone -> Messages.of("library.items.gone", gone.on()))
                .or(() -> item.goodUntil()
                        .map(last -> item.isStaleOn(context.today())
                                ? Messages.of("library.items.stale", last)
                                : last.toString()))
                .orElse("");
        return new BookRow(
                item.code(),
                item.name(),
                item.unit().symbol(),
                String.join("; ", costs),
                until,
                Optional.of(item),
                Optional.empty());
    }

    private static BookRow row(Assembly assembly) {
        return new BookRow(
                assembly.code(),
                assembly.name(),
                assembly.driver().unit().symbol(),
                Messages.of("library.costs.assembly", assembly.parts().size()),
                "",
                Optional.empty(),
                Optional.of(assembly));
    }

    private void showChosen() {
        Optional<BookRow> row = results.chosen();
        Optional<LineItem> item = row.flatMap(BookRow::item);
        row.flatMap(BookRow::assembly).ifPresent(assembly -> LibraryControls.say(parts, described(assembly)));
        cards.show(right, row.flatMap(BookRow::assembly).isPresent() ? ASSEMBLY : ITEM);
        item.ifPresentOrElse(one -> pane.show(one, book.orElseThrow()), pane::clear);
        past.show(item.map(LineItem::history).orElse(List.of()));
        showUses();
    }

    private void showUses() {
        if (about.getSelectedIndex() == USED) {
            results.chosen().flatMap(BookRow::item).map(LineItem::code).ifPresentOrElse(uses::show, uses::clear);
        }
    }

    private String described(Assembly assembly) {
        String lines = assembly.parts().stream()
                .map(part -> Messages.of(
                        "library.part",
                        part.each().toPlainString(),
                        part.item(),
                        book.flatMap(OpenBook::book)
                                .flatMap(one -> one.find(part.item()))
                                .map(LineItem::name)
                                .orElse("")))
                .collect(Collectors.joining("\n"));
        return Messages.of(
                "library.assembly",
                assembly.code(),
                assembly.name(),
                assembly.driver().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                lines,
                String.join("\n", assembly.notes()));
    }

    private void trial(BookEdit step) {
        Path job = context.job();
        tasks.latest("trial", () -> step.on(LibraryContext.bookOf(job).trial()), reply -> pane.described(step, reply));
    }

    private void write(BookEdit step) {
        Path job = context.job();
        tasks.run(() -> context.home().step(job, () -> written(step, job)), done -> {
            show(done.book);
            pane.written(done.reply);
            context.bookMoved();
        });
    }

    private record Written(Reply reply, OpenBook book) {}

    private static Written written(BookEdit step, Path job) throws IOException {
        Reply reply = step.on(LibraryContext.bookOf(job));
        return new Written(reply, OpenBook.of(LibraryContext.bookOf(job)));
    }
}
