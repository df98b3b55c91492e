package spadework.form.field;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import spadework.draft.Pointer;
import spadework.form.session.JobSession;

/** The rows of a list of the draft, as a table sees them. */
public final class RowsTableModel extends AbstractTableModel {
    private final JobSession session;
    private final BasePointer list;
    private final List<RowColumn> columns;
    private int shown;

    RowsTableModel(JobSession session, BasePointer list, List<RowColumn> columns) {
        this.session = session;
        this.list = list;
        this.columns = columns;
    }

    /** Takes the number of rows from the draft; true if it changed. */
    boolean isRecounted() {
        int now = list.at("").map(session.draft()::rows).orElse(0);
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

    @Override
    public int getRowCount() {
        return shown;
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
