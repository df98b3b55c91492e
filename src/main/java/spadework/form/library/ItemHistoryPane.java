// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.Messages;
import spadework.form.kit.ReadOnlyTable;
import spadework.pricebook.ItemChange;

/** What was changed in an item, when and why; the newest first. */
public final class ItemHistoryPane extends JPanel {
    private final ReadOnlyTable<HistoryRow> results = new ReadOnlyTable<>(
            "library.past",
            List.of(
                    ReadOnlyTable.Column.figure(
                            "library.past.on", 3, step -> step.on().toString(), HistoryRow::on),
                    ReadOnlyTable.Column.text("library.past.what", 4, HistoryRow::what),
                    ReadOnlyTable.Column.text("library.past.from", 4, HistoryRow::from),
                    ReadOnlyTable.Column.text("library.past.to", 4, HistoryRow::to),
                    ReadOnlyTable.Column.text("library.past.reason", 6, HistoryRow::reason)));

    private record HistoryRow(LocalDate on, String what, String from, String to, String reason) {}

    ItemHistoryPane() {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1", "[grow,fill]", "[][grow,fill]"));
        add(LibraryControls.described("library.past.text"), "wmin 80");
        add(results.pane(), "hmin 80, wmin 80");
    }

    /** Shows what was changed, the latest first. */
    void show(List<ItemChange> history) {
        List<HistoryRow> steps = new ArrayList<>();
        for (int i = history.size() - 1; i >= 0; i--) {
            ItemChange change = history.get(i);
            if (change.values().isEmpty()) {
                steps.add(new HistoryRow(change.on(), Messages.of("library.past.added"), "", "", change.reason()));
            }
            change.values()
                    .forEach(value -> steps.add(new HistoryRow(
                            change.on(),
                            ItemValuesModel.name(value.what()),
                            value.from().orElse(Messages.of("library.nothing")),
                            value.to().orElse(Messages.of("library.nothing")),
                            change.reason())));
        }
        results.show(steps, step -> step);
    }
}
