// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.awt.Component;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;

/** The head of a column; one that is too narrow for its name shows it when pointed at. */
public record ColumnHeaderRenderer(TableCellRenderer plain) implements TableCellRenderer {

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        Component head = plain.getTableCellRendererComponent(table, value, selected, focused, row, column);
        if (head instanceof JComponent shown) {
            shown.setToolTipText(String.valueOf(value));
        }
        return head;
    }
}
