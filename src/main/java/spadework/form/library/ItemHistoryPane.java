package spadework.form.library;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.Messages;
import spadework.form.kit.ReadOnlyTable;
import spadework.pricebook.ItemChange;
import spadework.pricebook.LineItem;

/** What was changed in an item, when and why; the newest first. */
public final class ItemHistoryPane extends JPanel {
    private final ReadOnlyTable<Step> board = new ReadOnlyTable<>(
            "shelf.past",
            List.of(
                    ReadOnlyTable.Head.figure(
                            "shelf.past.on", 3, step -> step.on().toString(), Step::on),
                    ReadOnlyTable.Head.text("shelf.past.what", 4, Step::what),
                    ReadOnlyTable.Head.text("shelf.past.from", 4, Step::from),
                    ReadOnlyTable.Head.text("shelf.past.to", 4, Step::to),
                    ReadOnlyTable.Head.text("shelf.past.reason", 6, Step::reason)));

    private record Step(LocalDate on, String what, String from, String to, String reason) {}

    ItemHistoryPane() {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1", "[grow,fill]", "[][grow,fill]"));
        add(LibraryControls.told("shelf.past.told"), "wmin 80");
        add(board.pane(), "hmin 80, wmin 80");
    }

    void show(Optional<LineItem> item) {
        List<Step> steps = new ArrayList<>();
        List<ItemChange> history = item.map(LineItem::history).orElse(List.of());
        for (int i = history.size() - 1; i >= 0; i--) {
            ItemChange change = history.get(i);
            if (change.values().isEmpty()) {
                steps.add(new Step(change.on(), Messages.of("shelf.past.added"), "", "", change.reason()));
            }
            change.values()
                    .forEach(value -> steps.add(new Step(
                            change.on(),
                            ItemValuesModel.name(value.what()),
                            value.from().orElse(Messages.of("shelf.nothing")),
                            value.to().orElse(Messages.of("shelf.nothing")),
                            change.reason())));
        }
        board.show(steps, step -> step);
    }
}
