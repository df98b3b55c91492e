// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.awt.Color;
import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import spadework.draft.FieldKind;
import spadework.draft.SchemaField;
import spadework.finding.Fault;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.session.JobSession;

/** How a cell looks: a usual value in gray, a fault underlined, a chosen word as the window calls it. */
public final class DraftCellRenderer implements TableCellRenderer {
    private final JobSession session;
    private final RowsTableModel model;
    private final DefaultTableCellRenderer plain = PlainText.inTable();

    DraftCellRenderer(JobSession session, RowsTableModel model) {
        this.session = session;
        this.model = model;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        SchemaField spot = model.column(column).spot();
        String written = String.valueOf(value);
        boolean chosen = spot.kind() == FieldKind.CHOICE || spot.kind() == FieldKind.YES_OR_NO;
        boolean usual = written.isEmpty() && spot.usual().isPresent();
        String word = usual ? spot.usual().get() : written;
        String shown = chosen && !word.isEmpty() ? Messages.or("choice." + word, word) : word.replace('\n', ' ');
        JLabel label = (JLabel) plain.getTableCellRendererComponent(table, shown, selected, focused, row, column);
        if (usual && !selected) {
            label.setForeground(UIManager.getColor("Label.disabledForeground"));
        } else {
            label.setForeground(selected ? table.getSelectionForeground() : table.getForeground());
        }
        List<Fault> faults = model.pointer(row, column).map(session::faultsAt).orElse(List.of());
        if (!faults.isEmpty()) {
            Color color = UIManager.getColor(written.isEmpty() ? "Spadework.missing" : "Spadework.fault");
            label.setBorder(BorderFactory.createCompoundBorder(
                    BorderFactory.createMatteBorder(0, 0, 2, 0, color), BorderFactory.createEmptyBorder(0, 4, 0, 4)));
        } else if (!focused) {
            label.setBorder(BorderFactory.createEmptyBorder(1, 5, 1, 5));
        }
        return label;
    }
}
