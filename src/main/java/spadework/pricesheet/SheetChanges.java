// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;

/**
 * What a price workbook says otherwise than the book.
 *
 * @param cells the cells that were changed
 * @param faults what cannot be taken over, each with its cell
 */
public record SheetChanges(List<Changed> cells, List<Fault> faults) {

    /**
     * A changed value.
     *
     * @param place of the cell
     * @param what where the value stands in the item, as {@code material/cost}
     * @param to as the book will spell it; empty where it is taken out
     */
    public record Changed(Place place, String code, String what, String to) {}

    public SheetChanges {
        cells = List.copyOf(cells);
        faults = List.copyOf(faults);
    }

    /**
     * Compares a sheet with the book that it was made from.
     *
     * @param file named in faults
     * @param exported the cells as they were exported: what the book says otherwise by now was changed there, and is
     *     not taken back
     */
    public static SheetChanges of(String file, Grid grid, Grid exported, PriceBook book) {
        return new Comparing(file, grid, exported, book).changes();
    }

    /** One comparison on its way. */
    private static final class Comparing {
        private final String file;
        private final Grid grid;
        private final Grid exported;
        private final Map<CellContent, Integer> exportedRows = new HashMap<>();
        private final PriceBook book;
        private final List<Changed> cells = new ArrayList<>();
        private final List<Fault> faults = new ArrayList<>();

        private Comparing(String file, Grid grid, Grid exported, PriceBook book) {
            this.file = file;
            this.grid = grid;
            this.exported = exported;
            for (int row = 1; row < exported.rows().size(); row++) {
                exportedRows.putIfAbsent(exported.at(row, 0), row);
            }
            this.book = book;
        }

        private SheetChanges changes() {
            heads();
            if (faults.isEmpty()) {
                rows();
            }
            return new SheetChanges(cells, faults);
        }

        private void heads() {
            for (PriceColumn column : PriceColumn.values()) {
                CellContent head = grid.at(0, column.ordinal());
                if (!head.equals(CellContent.words(column.title()))) {
                    fault(
                            0,
                            column.ordinal(),
                            head.shown(),
                            "the head \"" + column.title() + "\"",
                            "put the column back, or export anew");
                }
            }
        }

        private void rows() {
            Map<String, Integer> seen = new HashMap<>();
            for (int row = 1; row < grid.rows().size(); row++) {
                CellContent code = grid.at(row, 0);
                if (grid.isBlank(row)) {
                    continue;
                }
                String text = code instanceof CellContent.Words words ? words.text() : "";
                if (seen.putIfAbsent(text, row) != null && !text.isEmpty()) {
                    fault(row, 0, code.shown() + " a second time", "each code once", "take one of the two rows out");
                } else if (book.find(text).isEmpty()) {
                    fault(row, 0, code.shown(), "a code of the price book", "add items with: book add");
                } else {
                    row(row, book.get(text));
                }
            }
            book.items().keySet().stream()
                    .filter(code -> !seen.containsKey(code))
                    .sorted()
                    .forEach(code -> fault(
                            grid.rows().size(),
                            0,
                            "no row for " + code,
                            "a row for every item",
                            "put it back, or retire it with: book retire " + code));
        }

        private void row(int row, LineItem item) {
            for (PriceColumn column : PriceColumn.values()) {
                CellContent now = grid.at(row, column.ordinal());
                CellContent was = column.of(item);
                if (now instanceof CellContent.Odd odd) {
                    fault(row, column.ordinal(), odd.what(), "a plain value", "write the value itself");
                } else if (!now.isSame(was)) {
                    differs(row, column, item, now, was);
                }
            }
            for (int extra = PriceColumn.values().length;
                    extra < grid.rows().get(row).size();
                    extra++) {
                if (!grid.at(row, extra).equals(CellContent.empty())) {
                    fault(row, extra, grid.at(row, extra).shown(), "nothing in this column", "take it out");
                }
            }
        }

        /** A cell that is not what the book says: it was changed here, or there, or in both. */
        private void differs(int row, PriceColumn column, LineItem item, CellContent now, CellContent was) {
            Integer then = exportedRows.get(CellContent.words(item.code()));
            CellContent before = then == null ? was : exported.at(then, column.ordinal());
            if (before.isSame(was)) {
                changed(row, column, item, now, was);
            } else if (!before.isSame(now)) {
                fault(
                        row,
                        column.ordinal(),
                        now.shown() + ", while the book was changed from " + before.shown() + " to " + was.shown()
                                + " since the export",
                        "what the book says, or a workbook exported after that change",
                        "write " + was.shown() + " here, or export anew and change it there");
            }
        }

        private void changed(int row, PriceColumn column, LineItem item, CellContent now, CellContent was) {
            if (!column.isOpen(item)) {
                fault(
                        row,
                        column.ordinal(),
                        now.shown(),
                        was.shown() + ", which is not changed here",
                        "put it back; change it with: book change " + item.code());
                return;
            }
            boolean number = column.isMoney() || column == PriceColumn.WASTE || column == PriceColumn.PER_HOUR;
            if (number && now instanceof CellContent.Words) {
                fault(row, column.ordinal(), now.shown(), "a number", "write the number without words or signs");
                return;
            }
            if (column.isMoney()
                    && now instanceof CellContent.Figure figure
                    && figure.value().signum() <= 0) {
                fault(
                        row,
                        column.ordinal(),
                        now.shown(),
                        "an amount above 0, or an empty cell",
                        "write what it costs, or empty the cell");
                return;
            }
            cells.add(
                    new Changed(place(row, column.ordinal()), item.code(), column.place(), column.spelled(item, now)));
        }

        private void fault(int row, int column, String found, String allowed, String fix) {
            faults.add(new Fault(place(row, column), found, allowed, fix));
        }

        private Place place(int row, int column) {
            return new Place(file, row + 1, column + 1, grid.cell(row, column));
        }
    }

    /** The changed values of each item, in the order of the sheet. */
    public Map<String, Map<String, String>> byItem() {
        Map<String, Map<String, String>> items = new LinkedHashMap<>();
        cells.forEach(cell -> items.computeIfAbsent(cell.code(), code -> new LinkedHashMap<>())
                .put(cell.what(), cell.to()));
        return items;
    }
}
