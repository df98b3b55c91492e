// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellEditor;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.Theme;

/** The table in which an item of the price book is changed: what is typed over stands out. */
public final class ItemValuesTable extends JTable {
    private final transient ItemValuesModel sheet;

    ItemValuesTable(ItemValuesModel sheet) {
        super(sheet);
        this.sheet = sheet;
        setName("library.values");
        getAccessibleContext().setAccessibleName(Messages.of("library.values"));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellSelectionEnabled(true);
        setSurrendersFocusOnKeystroke(true);
        putClientProperty("terminateEditOnFocusLost", true);
        getTableHeader().setReorderingAllowed(false);
        int[] weights = {4, 5, 5};
        DefaultTableCellRenderer look = new Look();
        for (int i = 0; i < weights.length; i++) {
            getColumnModel().getColumn(i).setPreferredWidth(weights[i] * 30);
            getColumnModel().getColumn(i).setCellRenderer(look);
        }
    }

    @Override
    public TableCellEditor getCellEditor(int row, int column) {
        List<String> words = new ArrayList<>(sheet.choices(row));
        String name = Messages.of("cell.name", sheet.getValueAt(row, 0), row + 1);
        if (words.isEmpty()) {
            JTextField field = new JTextField();
            field.setName("library.value");
            field.getAccessibleContext().setAccessibleName(name);
            return new DefaultCellEditor(field);
        }
        String stands = sheet.getValueAt(row, ItemValuesModel.THEN).toString();
        if (!words.contains("")) {
            words.add(0, "");
        }
        if (!words.contains(stands)) {
            words.add(stands);
        }
        JComboBox<String> box = new JComboBox<>(words.toArray(String[]::new));
        box.setName("library.value");
        box.getAccessibleContext().setAccessibleName(name);
        PlainText.inList(box);
        return new DefaultCellEditor(box);
    }

    private static final class Look extends DefaultTableCellRenderer {
        Look() {
            PlainText.of(this);
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, chosen, focused, row, column);
            boolean changed = column == ItemValuesModel.THEN && ((ItemValuesModel) table.getModel()).isChanged(row);
            setFont(changed ? Theme.bold(table.getFont().getSize2D()) : table.getFont());
            setForeground(
                    chosen
                            ? table.getSelectionForeground()
                            : changed ? UIManager.getColor("Spadework.water") : table.getForeground());
            setToolTipText(value.toString().length() > 30 ? value.toString() : null);
            return this;
        }
    }
}
