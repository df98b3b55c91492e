// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableRowSorter;

/**
 * Rows to be read: arrows choose one, Enter or a double click opens it, a click on a head sorts.
 *
 * @param <R> what a row stands for
 */
public final class ReadOnlyTable<R> {
    private final Rows<R> rows;
    private final JTable table;
    private final JScrollPane pane;
    private final List<Runnable> watchers = new ArrayList<>();
    private Consumer<R> opened = row -> {};
    private boolean showing;

    /**
     * A column.
     *
     * @param key of its head in the words
     * @param right whether it holds figures
     * @param order how it sorts
     */
    public record Column<R>(String key, int weight, boolean right, Function<R, String> text, Comparator<R> order) {

        public static <R> Column<R> text(String key, int weight, Function<R, String> text) {
            return new Column<>(key, weight, false, text, Comparator.comparing(text));
        }

        public static <R, C extends Comparable<? super C>> Column<R> figure(
                String key, int weight, Function<R, String> text, Function<R, C> order) {
            return new Column<>(key, weight, true, text, Comparator.comparing(order));
        }
    }

    /**
     * Makes an empty table.
     *
     * @param key of its name in the words, which is the name of the table too
     */
    public ReadOnlyTable(String key, List<Column<R>> columns) {
        rows = new Rows<>(List.copyOf(columns));
        table = new JTable(rows);
        table.setName(key);
        table.getAccessibleContext().setAccessibleName(Messages.of(key));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        TableRowSorter<Rows<R>> sorter = new TableRowSorter<>(rows);
        for (int i = 0; i < columns.size(); i++) {
            DefaultTableCellRenderer look = PlainText.inTable();
            look.setHorizontalAlignment(columns.get(i).right() ? SwingConstants.RIGHT : SwingConstants.LEFT);
            table.getColumnModel().getColumn(i).setPreferredWidth(columns.get(i).weight() * 30);
            table.getColumnModel().getColumn(i).setCellRenderer(look);
            Comparator<R> order = columns.get(i).order();
            sorter.setComparator(i, Comparator.<Cell<R>, R>comparing(Cell::row, order));
        }
        table.setRowSorter(sorter);
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!showing && !event.getValueIsAdjusting()) {
                tell();
            }
        });
        pane = WheelScroll.in(new JScrollPane(table));
        KeyBindings.inside(table, "ENTER", () -> chosen().ifPresent(row -> opened.accept(row)));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    chosen().ifPresent(row -> opened.accept(row));
                }
            }
        });
    }

    public JTable table() {
        return table;
    }

    public JScrollPane pane() {
        return pane;
    }

    /** Tells when another row is chosen, or none, and whenever other rows are shown. */
    public void onChosen(Runnable watcher) {
        watchers.add(watcher);
    }

    /** What opening a row does. */
    public void onOpened(Consumer<R> open) {
        opened = open;
    }

    /**
     * Shows other rows. The row that was chosen stays so, or else the first one is.
     *
     * @param key what a row is known by
     */
    public void show(List<R> shown, Function<R, Object> key) {
        Optional<Object> was = chosen().map(key);
        showing = true;
        rows.all = List.copyOf(shown);
        rows.fireTableDataChanged();
        table.clearSelection();
        List<Object> keys = shown.stream().map(key).toList();
        if (!keys.isEmpty()) {
            choose(Math.max(0, was.map(keys::indexOf).orElse(0)));
        }
        showing = false;
        tell();
    }

    private void tell() {
        watchers.forEach(Runnable::run);
    }

    public Optional<R> chosen() {
        int row = table.getSelectedRow();
        return row < 0 || row >= table.getRowCount()
                ? Optional.empty()
                : Optional.of(rows.all.get(table.convertRowIndexToModel(row)));
    }

    /** Chooses a row by its place among those shown last. */
    void choose(int index) {
        int row = table.convertRowIndexToView(index);
        table.setRowSelectionInterval(row, row);
        table.scrollRectToVisible(table.getCellRect(row, 0, true));
    }

    /** A row further down or up. */
    public void step(int by) {
        int row = table.getSelectedRow() + by;
        if (row >= 0 && row < table.getRowCount()) {
            table.setRowSelectionInterval(row, row);
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
    }

    /** A cell, which sorts by its row. */
    private record Cell<R>(R row, String text) {
        @Override
        public String toString() {
            return text;
        }
    }

    private static final class Rows<R> extends AbstractTableModel {
        private final List<Column<R>> columns;
        private List<R> all = List.of();

        private Rows(List<Column<R>> columns) {
            this.columns = columns;
        }

        @Override
        public int getRowCount() {
            return all.size();
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            return Messages.of(columns.get(column).key());
        }

        @Override
        public Object getValueAt(int row, int column) {
            return new Cell<>(all.get(row), columns.get(column).text().apply(all.get(row)));
        }
    }
}
