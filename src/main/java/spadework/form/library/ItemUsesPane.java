package spadework.form.library;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.bids.Use;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.ReadOnlyTable;
import spadework.office.portfolio.BidsService;

/** Every use of an item in the bids of the folder; a bid opens by a click. */
public final class ItemUsesPane extends JPanel {
    private final LibraryContext reach;
    private final BackgroundTasks errands;
    private final JLabel told = PlainText.of(new JLabel(" "));
    private final JTextArea unread = LibraryControls.lines("shelf.unread");
    private final ReadOnlyTable<Use> board = new ReadOnlyTable<>(
            "shelf.uses",
            List.of(
                    ReadOnlyTable.Head.text("shelf.bids.number", 4, Use::number),
                    ReadOnlyTable.Head.text("shelf.bids.standing", 3, use -> Messages.of("standing." + use.standing())),
                    ReadOnlyTable.Head.figure(
                            "shelf.bids.issued", 3, use -> use.issued().toString(), Use::issued),
                    ReadOnlyTable.Head.figure(
                            "shelf.uses.quantity",
                            3,
                            use -> use.quantity().toPlainString() + " "
                                    + use.unit().symbol(),
                            Use::quantity),
                    ReadOnlyTable.Head.figure(
                            "shelf.uses.each", 3, use -> use.unitPrice().text(), Use::unitPrice),
                    ReadOnlyTable.Head.figure(
                            "shelf.uses.price", 3, use -> use.price().text(), Use::price),
                    ReadOnlyTable.Head.text("shelf.uses.section", 5, Use::section)));
    private Optional<String> shown = Optional.empty();

    ItemUsesPane(LibraryContext reach, BackgroundTasks errands) {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1, hidemode 3", "[grow,fill]", "[][grow,fill][][]"));
        this.reach = reach;
        this.errands = errands;
        told.setName("shelf.uses.told");
        unread.setVisible(false);
        board.onOpened(this::open);
        add(told, "wmin 80");
        add(board.pane(), "hmin 80, wmin 80");
        add(unread, "wmin 80");
        add(LibraryControls.row(List.of(
                LibraryControls.button("shelf.uses.open", () -> board.chosen().ifPresent(this::open)))));
        reach.onTree(() -> shown = Optional.empty());
    }

    private void open(Use use) {
        reach.open(Path.of(use.place()));
    }

    /** Looks an item up, unless it is the one that is shown. */
    void show(Optional<String> code) {
        if (code.isPresent() && code.equals(shown)) {
            return;
        }
        shown = code;
        Path tree = reach.tree();
        board.show(List.of(), Use::place);
        told.setText(
                code.map(one -> Messages.of("shelf.uses.looking", one, tree)).orElse(" "));
        code.ifPresent(one -> errands.latest("uses", () -> BidsService.uses(one, tree), found -> {
            board.show(found.rows(), use -> use);
            told.setText(Messages.of("shelf.uses.found", one, found.rows().size(), tree));
            LibraryControls.say(unread, String.join("\n", found.unread()));
            unread.setVisible(!found.unread().isEmpty());
            revalidate();
        }));
    }
}
