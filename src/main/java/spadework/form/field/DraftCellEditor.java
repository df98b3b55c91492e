// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.awt.Component;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractCellEditor;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.TableCellEditor;
import spadework.draft.Draft;
import spadework.draft.FieldKind;
import spadework.draft.SchemaField;
import spadework.draft.TypedValue;
import spadework.form.kit.CalendarPick;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PickList;
import spadework.form.kit.PlainText;
import spadework.form.kit.TextChanges;
import spadework.form.kit.TypedPrefix;
import spadework.form.kit.WordChoice;
import spadework.form.session.JobSession;
import spadework.form.session.References;

/**
 * Edits a cell of a table; each keystroke goes into the draft, and leaving it with Escape takes them back, with the row
 * that they made.
 */
public final class DraftCellEditor extends AbstractCellEditor implements TableCellEditor {
    private final JobSession session;
    private final RowsTableModel model;
    private final JTextField text = new JTextField();
    private final JTextField day = new JTextField();
    private final PickList picks;
    private final CalendarPick calendar;
    private final JComboBox<WordChoice> box = new JComboBox<>();
    private Optional<String> pointer = Optional.empty();
    private SchemaField spot;
    private String before = "";
    private int edited;
    private Optional<Draft> beforeRow = Optional.empty();
    private boolean showing;

    DraftCellEditor(JobSession session, RowsTableModel model) {
        this.session = session;
        this.model = model;
        text.setName("cell");
        day.setName("cell day");
        for (JTextField field : List.of(text, day)) {
            // The key that opens the cell is in it before the keyboard is: selecting all then would lose it to the
            // next key.
            field.putClientProperty("JTextField.selectAllOnFocusPolicy", "never");
            field.setBorder(BorderFactory.createEmptyBorder(0, 4, 0, 4));
            field.getDocument().putProperty("filterNewlines", false);
        }
        calendar = new CalendarPick(day, session::day);
        TextChanges.in(day, () -> write(day.getText()));
        box.setName("cell choice");
        box.setMaximumRowCount(14);
        PlainText.inList(box);
        TypedPrefix.in(box);
        picks = new PickList(text, this::picks, false);
        TextChanges.in(text, () -> {
            if (!showing) {
                picks.typed();
                write(text.getText());
            }
        });
        box.addActionListener(event -> {
            if (!showing && box.getSelectedItem() instanceof WordChoice choice) {
                write(choice.word());
            }
        });
    }

    /** Shows what can be picked for the cell that is edited: days, codes, words. */
    void openPicks() {
        if (isChoice()) {
            box.setPopupVisible(true);
        } else if (spot.kind() == FieldKind.DATE) {
            calendar.begin();
        } else {
            picks.openAll();
        }
    }

    private JTextField field() {
        return spot.kind() == FieldKind.DATE ? day : text;
    }

    private List<WordChoice> picks() {
        return pointer.filter(at -> References.isAt(format(at)))
                .map(at -> References.at(session, format(at)))
                .orElse(List.of());
    }

    private static String format(String pointer) {
        return pointer.replaceAll("/\\d+(?=/|$)", "/0");
    }

    /** Writes what was typed in full form; the first key in the blank row makes it a row of the list. */
    private void write(String typed) {
        if (showing || pointer.isEmpty() || (isBlankRow() && typed.isEmpty())) {
            return;
        }
        String words = TypedValue.inFull(spot, typed);
        if (isBlankRow()) {
            beforeRow = Optional.of(session.draft());
            session.edit(model.withRowAdded().typed(pointer.get(), words));
        } else {
            session.type(pointer.get(), words);
        }
    }

    /** Ends without a word: the row that was edited is there no more, or another stands in its place. */
    void letGo() {
        end();
        fireEditingCanceled();
    }

    private boolean isBlankRow() {
        return edited >= model.rows();
    }

    @Override
    public Component getTableCellEditorComponent(JTable table, Object value, boolean selected, int row, int column) {
        RowColumn place = model.column(column);
        pointer = model.pointer(row, column);
        spot = place.spot();
        edited = row;
        beforeRow = Optional.empty();
        before = String.valueOf(value);
        String name = Messages.of("cell.name", place.name(), row + 1);
        showing = true;
        picks.begin();
        field().setText(before);
        field().getAccessibleContext().setAccessibleName(name);
        field().putClientProperty("JTextField.placeholderText", LabeledControl.placeholder(spot));
        box.getAccessibleContext().setAccessibleName(name);
        if (isChoice()) {
            List<WordChoice> choices = WordChoice.with(BoundChoiceField.choices(spot), before);
            box.setModel(new DefaultComboBoxModel<>(choices.toArray(WordChoice[]::new)));
            box.setSelectedItem(WordChoice.of(choices, before));
            TypedPrefix.begin(box);
        }
        showing = false;
        return isChoice() ? box : field();
    }

    private boolean isChoice() {
        return spot.kind() == FieldKind.CHOICE || spot.kind() == FieldKind.YES_OR_NO;
    }

    /** One click chooses a cell, two edit it; so does any key. */
    @Override
    public boolean isCellEditable(EventObject event) {
        return !(event instanceof MouseEvent click) || click.getClickCount() > 1;
    }

    @Override
    public Object getCellEditorValue() {
        return isChoice() && box.getSelectedItem() instanceof WordChoice choice ? choice.word() : field().getText();
    }

    @Override
    public boolean stopCellEditing() {
        picks.finish();
        end();
        return super.stopCellEditing();
    }

    @Override
    public void cancelCellEditing() {
        picks.begin();
        if (pointer.isPresent()) {
            beforeRow.ifPresentOrElse(session::edit, () -> session.type(pointer.get(), before));
            pointer = Optional.empty();
        }
        end();
        super.cancelCellEditing();
    }

    private void end() {
        pointer.ifPresent(at -> {
            Draft draft = session.draft();
            Draft completed = References.completed(session, draft, at);
            if (!completed.equals(draft)) {
                session.edit(completed);
            }
        });
        pointer = Optional.empty();
        session.settle();
    }
}
