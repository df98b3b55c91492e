package spadework.form;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import spadework.draft.Pointer;

/** The rows of a list of the draft, as a table sees them. */
final class RowsModel extends AbstractTableModel {
    private final Desk desk;
    private final Base list;
    private final List<Column> columns;
    private int shown;

    RowsModel(Desk desk, Base list, List<Column> columns) {
        this.desk = desk;
        this.list = list;
        this.columns = columns;
    }

    /** Takes the number of rows from the draft; true if it changed. */
    boolean isRecounted() {
        int now = list.at("").map(desk.draft()::rows).orElse(0);
        boolean changed = now != shown;
        shown = now;
        return changed;
    }

    Column column(int index) {
        return columns.get(index);
    }

    List<Column> columns() {
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
        return pointer(row, column).map(desk.draft()::shown).orElse("");
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        // The editors write into the draft key by key.
    }
}
