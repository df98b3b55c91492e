// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.TextChanges;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;

/** The price book, searched by words: arrows choose, Enter puts the item into the job. */
public final class BookSearchPane extends JPanel {
    private final Supplier<Optional<PriceBook>> book;
    private final UnaryOperator<String> called;
    private final JTextField words = new JTextField();
    private final Items items = new Items();
    private final JTable table = new JTable(items);
    private final JTextArea about = LabeledControl.wrapped();

    /**
     * Makes the pane.
     *
     * @param book the price book as this job uses it
     * @param called what a text of the book is in the window's language
     * @param take puts an item into the job
     */
    public BookSearchPane(Supplier<Optional<PriceBook>> book, UnaryOperator<String> called, Consumer<LineItem> take) {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1", "[grow,fill]", "[][][grow,fill][][]"));
        this.book = book;
        this.called = called;
        JLabel label = new JLabel(Messages.of("book.words"));
        label.setLabelFor(words);
        words.setName("book words");
        words.getAccessibleContext().setAccessibleName(Messages.of("book.words"));
        words.putClientProperty("JTextField.placeholderText", Messages.of("book.example"));
        table.setName("book items");
        table.getAccessibleContext().setAccessibleName(Messages.of("pane.book"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        int[] weights = {3, 8, 1, 3};
        for (int i = 0; i < weights.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(weights[i] * 30);
            table.getColumnModel().getColumn(i).setCellRenderer(PlainText.inTable());
        }
        table.getSelectionModel().addListSelectionListener(event -> tell());
        about.setName("book about");
        about.setRows(4);
        about.setForeground(words.getForeground());
        about.getAccessibleContext().setAccessibleName(Messages.of("book.about"));
        JButton put = new JButton(KeyBindings.action(Messages.of("book.take"), () -> chosen().ifPresent(take)));
        put.setName("book take");
        TextChanges.in(words, this::search);
        KeyBindings.inside(words, "DOWN", () -> step(1));
        KeyBindings.inside(words, "UP", () -> step(-1));
        KeyBindings.inside(words, "ENTER", () -> chosen().ifPresent(take));
        KeyBindings.inside(table, "ENTER", () -> chosen().ifPresent(take));
        add(label);
        add(words);
        add(new JScrollPane(table), "hmin 80, wmin 80");
        add(about, "wmin 80, hmin 76");
        add(put, "growx 0");
    }

    public JTextField words() {
        return words;
    }

    public void showAnswer() {
        if (isShowing() && items.all.isEmpty()) {
            search();
        }
    }

    private void search() {
        items.show(book.get().map(b -> matching(b, words.getText(), called)).orElse(List.of()));
        if (items.getRowCount() > 0) {
            table.setRowSelectionInterval(0, 0);
        }
        tell();
    }

    /** The items that have all the words somewhere in what they say, by code. */
    static List<LineItem> matching(PriceBook book, String words, UnaryOperator<String> called) {
        List<String> sought = List.of(words.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        return book.items().values().stream()
                .filter(item -> sought.stream().allMatch(said(item, called)::contains))
                .sorted(Comparator.comparing(LineItem::code))
                .toList();
    }

    private static String said(LineItem item, UnaryOperator<String> called) {
        return String.join(
                        " ",
                        item.code(),
                        item.name(),
                        called.apply(item.name()),
                        item.homeowner(),
                        item.section().heading(),
                        item.follows().map(measure -> measure.trade()).orElse(""),
                        String.join(" ", item.notes()))
                .toLowerCase(Locale.ROOT);
    }

    private void step(int by) {
        int row = table.getSelectedRow() + by;
        if (row >= 0 && row < items.getRowCount()) {
            table.setRowSelectionInterval(row, row);
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
    }

    private Optional<LineItem> chosen() {
        int row = table.getSelectedRow();
        return row < 0 || row >= items.all.size() ? Optional.empty() : Optional.of(items.all.get(row));
    }

    private void tell() {
        about.setVisible(true);
        about.setText(chosen().map(item -> Messages.of(
                        "book.text",
                        called.apply(item.name()),
                        called.apply(item.homeowner()),
                        item.source().text(),
                        item.source().on()))
                .orElse(Messages.of("book.none")));
        about.setCaretPosition(0);
    }

    private final class Items extends AbstractTableModel {
        private List<LineItem> all = new ArrayList<>();

        void show(List<LineItem> found) {
            all = found;
            fireTableDataChanged();
        }

        @Override
        public int getRowCount() {
            return all.size();
        }

        @Override
        public int getColumnCount() {
            return 4;
        }

        @Override
        public String getColumnName(int column) {
            return Messages.of("book." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            LineItem item = all.get(row);
            return switch (column) {
                case 0 -> item.code();
                case 1 -> called.apply(item.name());
                case 2 -> item.unit().symbol();
                default ->
                    Messages.or(
                            "choice." + item.section().label(), item.section().label());
            };
        }
    }
}
