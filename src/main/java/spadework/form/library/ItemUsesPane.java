// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.bids.BidUse;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.ReadOnlyTable;
import spadework.office.portfolio.BidsService;

/** Every use of an item in the bids of the folder; a bid opens by a click. */
public final class ItemUsesPane extends JPanel {
    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final JLabel message = PlainText.of(new JLabel(" "));
    private final JTextArea unread = LibraryControls.lines("library.unread");
    private final ReadOnlyTable<BidUse> results = new ReadOnlyTable<>(
            "library.uses",
            List.of(
                    ReadOnlyTable.Column.text("library.bids.number", 4, BidUse::number),
                    ReadOnlyTable.Column.text(
                            "library.bids.standing", 3, use -> Messages.of("standing." + use.standing())),
                    ReadOnlyTable.Column.figure(
                            "library.bids.issued", 3, use -> use.issued().toString(), BidUse::issued),
                    ReadOnlyTable.Column.figure(
                            "library.uses.quantity",
                            3,
                            use -> use.quantity().toPlainString() + " "
                                    + use.unit().symbol(),
                            BidUse::quantity),
                    ReadOnlyTable.Column.figure(
                            "library.uses.each", 3, use -> use.unitPrice().text(), BidUse::unitPrice),
                    ReadOnlyTable.Column.figure(
                            "library.uses.price", 3, use -> use.price().text(), BidUse::price),
                    ReadOnlyTable.Column.text("library.uses.section", 5, BidUse::section)));
    private Optional<String> shown = Optional.empty();

    ItemUsesPane(LibraryContext context, BackgroundTasks tasks) {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1, hidemode 3", "[grow,fill]", "[][grow,fill][][]"));
        this.context = context;
        this.tasks = tasks;
        message.setName("library.uses.text");
        unread.setVisible(false);
        results.onOpened(this::open);
        add(message, "wmin 80");
        add(results.pane(), "hmin 80, wmin 80");
        add(unread, "wmin 80");
        add(LibraryControls.row(List.of(LibraryControls.button(
                "library.uses.open", () -> results.chosen().ifPresent(this::open)))));
        context.onTree(() -> shown = Optional.empty());
    }

    private void open(BidUse use) {
        context.open(Path.of(use.place()));
    }

    /** Looks an item up, unless it is the one that is shown. */
    void show(String code) {
        if (shown.filter(code::equals).isPresent()) {
            return;
        }
        Path tree = context.tree();
        shown = Optional.of(code);
        begin(Messages.of("library.uses.looking", code, tree));
        tasks.latest("uses", () -> uses(code, tree), found -> {
            results.show(found.rows(), use -> use);
            message.setText(Messages.of("library.uses.found", code, found.rows().size(), tree));
            LibraryControls.say(unread, String.join("\n", found.unread()));
            unread.setVisible(!found.unread().isEmpty());
            revalidate();
        });
    }

    private BidsService.Found<BidUse> uses(String code, Path tree) throws IOException {
        context.home().refreshAll(tree);
        return BidsService.uses(code, tree);
    }

    /** No item is chosen. */
    void clear() {
        shown = Optional.empty();
        begin(" ");
    }

    private void begin(String words) {
        results.show(List.of(), BidUse::place);
        message.setText(words);
    }
}
