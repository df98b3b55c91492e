// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import spadework.form.field.BasePointer;
import spadework.form.field.RowsTable;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.ReadOnlyTable;
import spadework.form.kit.ShareBarCell;
import spadework.form.kit.WheelScroll;
import spadework.form.session.JobSession;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.pricing.PricedLine;

/** What the job costs line by line, and what this job adds to the book's lines or prices otherwise. */
public final class PricePage extends FormPage {
    private final Lines lines = new Lines();
    private final JTable table = new JTable(lines);
    private final RowsTable items;
    private final ReadOnlyTable<Subtotal> sections = new ReadOnlyTable<>(
            "price.sections",
            List.of(
                    ReadOnlyTable.Column.text("line.0", 6, Subtotal::name),
                    ReadOnlyTable.Column.figure("line.5", 8, row -> row.price().text(), Subtotal::price),
                    ReadOnlyTable.Column.figure("price.moved", 4, Subtotal::described, Subtotal::moved)));
    private List<Subtotal> shown = List.of();
    private boolean showing;

    /** @param working shows how a line came about, by its place among the lines */
    public PricePage(JobSession session, Consumer<Integer> working) {
        super(session, "price");
        group("sections");
        sections.pane().setPreferredSize(new Dimension(200, 10 * table.getRowHeight()));
        sections.table().getColumnModel().getColumn(1).setCellRenderer(new ShareBarCell(this::share));
        put(sections.pane(), "span 12, wmin 60");
        group("lines");
        table.setName("lines");
        table.getAccessibleContext().setAccessibleName(Messages.of("group.lines"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        int[] weights = {5, 6, 3, 2, 3, 4};
        for (int i = 0; i < weights.length; i++) {
            DefaultTableCellRenderer look = PlainText.inTable();
            look.setHorizontalAlignment(i == 2 || i > 3 ? SwingConstants.RIGHT : SwingConstants.LEFT);
            table.getColumnModel().getColumn(i).setPreferredWidth(weights[i] * 30);
            table.getColumnModel().getColumn(i).setCellRenderer(look);
        }
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!showing && !event.getValueIsAdjusting() && table.getSelectedRow() >= 0) {
                working.accept(table.getSelectedRow());
            }
        });
        JScrollPane scroll = WheelScroll.in(new JScrollPane(table));
        table.setPreferredScrollableViewportSize(new Dimension(200, 13 * table.getRowHeight()));
        put(scroll, "span 12, wmin 60");
        lists(this);
        items = tables().get(0);
    }

    /** What this job adds to the book's lines, and prices of its own. */
    static void lists(PageContent page) {
        page.group("items");
        page.list(BasePointer.JOB.inside("/items"), "/code=4", "/quantity=3", "/section=4", "/reason=8");
        page.rareGroup("prices");
        page.list(BasePointer.JOB.inside("/priceChanges"), "/code=4", "/materialCost=4", "/subcontract=4", "/reason=7");
    }

    /** What a section comes to, and what the last edit moved it by. */
    private record Subtotal(String name, Dollars price, Dollars moved) {
        String described() {
            return moved.isZero() ? "" : (moved.isNegative() ? "" : "+") + moved.text();
        }
    }

    private List<Subtotal> subtotals() {
        Map<String, Dollars> before = new HashMap<>();
        session()
                .previous()
                .ifPresent(old -> old.quote()
                        .sections()
                        .forEach(section -> before.put(section.section().name(), section.price())));
        List<Subtotal> rows = new ArrayList<>();
        session()
                .bid()
                .ifPresent(bid -> bid.quote().sections().forEach(section -> {
                    String name = section.section().name();
                    Dollars moved = before.isEmpty()
                            ? Dollars.ZERO
                            : section.price().minus(before.getOrDefault(name, Dollars.ZERO));
                    rows.add(new Subtotal(section(name), section.price(), moved));
                }));
        session().bid().ifPresent(bid -> {
            Optional<Bid> old = session().previous();
            add(
                    rows,
                    "price.minimum",
                    bid.quote().minimumTopUp(),
                    old.map(was -> was.quote().minimumTopUp())
                            .orElse(bid.quote().minimumTopUp()));
            add(
                    rows,
                    "price.tax",
                    bid.quote().tax(),
                    old.map(was -> was.quote().tax()).orElse(bid.quote().tax()));
            add(rows, "price.beyond", beyond(bid), old.map(PricePage::beyond).orElse(beyond(bid)));
        });
        return rows;
    }

    private String section(String name) {
        return session().view().map(shown -> shown.section(name)).orElse(name);
    }

    /** What both sides agreed beyond the lines, as after a change order. */
    private static Dollars beyond(Bid bid) {
        return bid.total().minus(bid.quote().total());
    }

    /** Adds what is no section, so that all rows come to the price; nothing of nothing. */
    private static void add(List<Subtotal> rows, String key, Dollars now, Dollars before) {
        if (!now.isZero() || !before.isZero()) {
            rows.add(new Subtotal(Messages.of(key), now, now.minus(before)));
        }
    }

    /** The price of a row beside that of the dearest one. */
    private double share(int row) {
        double most = shown.stream()
                .mapToDouble(one -> one.price().amount().doubleValue())
                .max()
                .orElse(0);
        return most <= 0 || row >= shown.size()
                ? 0
                : shown.get(row).price().amount().doubleValue() / most;
    }

    /** The keyboard goes to the blank row of the items. */
    @Override
    public void begin() {
        items.begin();
    }

    @Override
    public void showFaults() {
        super.showFaults();
        List<Subtotal> now = subtotals();
        if (!now.equals(shown)) {
            shown = now;
            sections.show(now, Subtotal::name);
        }
        showing = true;
        int chosen = table.getSelectedRow();
        session().bid().ifPresentOrElse(lines::show, lines::clear);
        if (chosen >= 0 && chosen < lines.getRowCount()) {
            table.setRowSelectionInterval(chosen, chosen);
        }
        table.setEnabled(session().bid().isPresent());
        showing = false;
    }

    private final class Lines extends AbstractTableModel {
        private final List<PricedLine> lines = new ArrayList<>();
        private Optional<Bid> shown = Optional.empty();

        @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
        void show(Bid bid) {
            if (shown.filter(old -> old == bid).isEmpty()) {
                shown = Optional.of(bid);
                lines.clear();
                lines.addAll(bid.quote().lines());
                fireTableDataChanged();
            }
        }

        void clear() {
            if (shown.isPresent()) {
                shown = Optional.empty();
                lines.clear();
                fireTableDataChanged();
            }
        }

        @Override
        public int getRowCount() {
            return lines.size();
        }

        @Override
        public int getColumnCount() {
            return 6;
        }

        @Override
        public String getColumnName(int column) {
            return Messages.of("line." + column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            PricedLine line = lines.get(row);
            return switch (column) {
                case 0 -> section(line.section().name());
                case 1 -> session().ofBook(line.name());
                case 2 -> line.quantity().toPlainString();
                case 3 -> line.unit().symbol();
                case 4 -> line.unitPrice().text();
                default -> line.price().text();
            };
        }
    }
}
