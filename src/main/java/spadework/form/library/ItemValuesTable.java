// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellEditor;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.PickList;
import spadework.form.kit.PlainText;
import spadework.form.kit.TextChanges;
import spadework.form.kit.Theme;
import spadework.form.kit.WordChoice;

/** The table in which an item of the price book is changed: what is typed over stands out. */
public final class ItemValuesTable extends JTable {
    private transient Optional<PickList> open = Optional.empty();
    private final transient ItemValuesModel sheet;
    private final transient Function<String, List<WordChoice>> named;

    /** @param named what the company has by name for a place of an item: crews, machines */
    ItemValuesTable(ItemValuesModel sheet, Function<String, List<WordChoice>> named) {
        super(sheet);
        this.sheet = sheet;
        this.named = named;
        KeyBindings.inside(this, "F4", this::pick);
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
            return named.apply(sheet.place(row)).isEmpty()
                    ? new DefaultCellEditor(field)
                    : picking(field, sheet.place(row));
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

    private TableCellEditor picking(JTextField field, String place) {
        PickList picks = new PickList(field, () -> named.apply(place), false);
        boolean[] begun = new boolean[1];
        TextChanges.in(field, () -> {
            if (begun[0]) {
                picks.typed();
            }
        });
        open = Optional.of(picks);
        return new DefaultCellEditor(field) {
            @Override
            public Component getTableCellEditorComponent(
                    JTable table, Object value, boolean chosen, int row, int column) {
                begun[0] = false;
                Component made = super.getTableCellEditorComponent(table, value, chosen, row, column);
                begun[0] = true;
                return made;
            }

            @Override
            public boolean stopCellEditing() {
                picks.finish();
                return super.stopCellEditing();
            }
        };
    }

    /** Shows what can be picked for the value that is chosen. */
    private void pick() {
        open = Optional.empty();
        if ((isEditing() || editCellAt(getSelectedRow(), getSelectedColumn())) && getEditorComponent() != null) {
            getEditorComponent().requestFocusInWindow();
            SwingUtilities.invokeLater(() -> open.ifPresent(PickList::openAll));
        }
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
