// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.session.JobSession;

/** The rows of a list of the draft as a table sees them, and below them one that is blank and waits to be typed in. */
public final class RowsTableModel extends AbstractTableModel {
    private final JobSession session;
    private final BasePointer list;
    private final List<RowColumn> columns;
    /** Rows of the draft when they were last counted; -1 where the list has no place, as in a row not yet chosen. */
    private int shown = -1;

    RowsTableModel(JobSession session, BasePointer list, List<RowColumn> columns) {
        this.session = session;
        this.list = list;
        this.columns = columns;
    }

    /** Takes the number of rows from the draft; true if it changed. */
    boolean isRecounted() {
        int now = list.at("").isPresent() ? rows() : -1;
        boolean changed = now != shown;
        shown = now;
        return changed;
    }

    public RowColumn column(int index) {
        return columns.get(index);
    }

    List<RowColumn> columns() {
        return columns;
    }

    /** Where a cell stands. */
    Optional<String> pointer(int row, int column) {
        return list.at("")
                .map(pointer -> Pointer.of(pointer, row) + columns.get(column).key());
    }

    /** The rows that the draft has. */
    public int rows() {
        return list.at("").map(session.draft()::rows).orElse(0);
    }

    /** The draft with the blank row as the last of the list. */
    Draft withRowAdded() {
        return list.at("")
                .map(pointer -> NewRowValues.added(session.draft(), pointer))
                .orElse(session.draft());
    }

    @Override
    public int getRowCount() {
        return shown + 1;
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public String getColumnName(int column) {
        return columns.get(column).name();
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return true;
    }

    @Override
    public Object getValueAt(int row, int column) {
        return pointer(row, column).map(session.draft()::shown).orElse("");
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        // The editors write into the draft key by key.
    }
}
