package spadework.form.kit;

import java.awt.Dimension;
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
    private final List<Consumer<Optional<R>>> watchers = new ArrayList<>();
    private Consumer<R> opened = row -> {};
    private boolean showing;

    /**
     * A column.
     *
     * @param key of its head in the words
     * @param right whether it holds figures
     * @param order how it sorts
     */
    public record Head<R>(String key, int weight, boolean right, Function<R, String> text, Comparator<R> order) {

        public static <R> Head<R> text(String key, int weight, Function<R, String> text) {
            return new Head<>(key, weight, false, text, Comparator.comparing(text));
        }

        public static <R, C extends Comparable<? super C>> Head<R> figure(
                String key, int weight, Function<R, String> text, Function<R, C> order) {
            return new Head<>(key, weight, true, text, Comparator.comparing(order));
        }
    }

    /**
     * Makes an empty board.
     *
     * @param key of its name in the words, which is the name of the table too
     */
    public ReadOnlyTable(String key, List<Head<R>> heads) {
        rows = new Rows<>(List.copyOf(heads));
        table = new JTable(rows);
        table.setName(key);
        table.getAccessibleContext().setAccessibleName(Messages.of(key));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        TableRowSorter<Rows<R>> sorter = new TableRowSorter<>(rows);
        for (int i = 0; i < heads.size(); i++) {
            DefaultTableCellRenderer look = PlainText.inTable();
            look.setHorizontalAlignment(heads.get(i).right() ? SwingConstants.RIGHT : SwingConstants.LEFT);
            table.getColumnModel().getColumn(i).setPreferredWidth(heads.get(i).weight() * 30);
            table.getColumnModel().getColumn(i).setCellRenderer(look);
            Comparator<R> order = heads.get(i).order();
            sorter.setComparator(i, Comparator.<Cell<R>, R>comparing(Cell::row, order));
        }
        table.setRowSorter(sorter);
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!showing && !event.getValueIsAdjusting()) {
                tell();
            }
        });
        pane = new JScrollPane(table);
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

    /** As high as so many rows. */
    ReadOnlyTable<R> high(int rowsHigh) {
        table.setPreferredScrollableViewportSize(new Dimension(200, rowsHigh * table.getRowHeight()));
        return this;
    }

    /** Tells when another row is chosen, or none, and whenever other rows are shown. */
    public void onChosen(Consumer<Optional<R>> watcher) {
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
        watchers.forEach(watcher -> watcher.accept(chosen()));
    }

    List<R> all() {
        return rows.all;
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
        private final List<Head<R>> heads;
        private List<R> all = List.of();

        private Rows(List<Head<R>> heads) {
            this.heads = heads;
        }

        @Override
        public int getRowCount() {
            return all.size();
        }

        @Override
        public int getColumnCount() {
            return heads.size();
        }

        @Override
        public String getColumnName(int column) {
            return Messages.of(heads.get(column).key());
        }

        @Override
        public Object getValueAt(int row, int column) {
            return new Cell<>(all.get(row), heads.get(column).text().apply(all.get(row)));
        }
    }
}
