// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.pricebook.PriceBook;
import spadework.pricebook.SupplierMap;
import spadework.pricesheet.SheetChanges.Changed;

/** What a supplier's list says of the items that are mapped to it. Rows that nobody mapped are passed over. */
public final class SupplierChanges {
    private final String file;
    private final Grid grid;
    private final SupplierMap map;
    private final PriceBook book;
    private final List<Changed> cells = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    private SupplierChanges(String file, Grid grid, SupplierMap map, PriceBook book) {
        this.file = file;
        this.grid = grid;
        this.map = map;
        this.book = book;
    }

    /**
     * Reads a list.
     *
     * @param file named in faults
     */
    public static SheetChanges of(String file, Grid grid, SupplierMap map, PriceBook book) {
        return new SupplierChanges(file, grid, map, book).changes();
    }

    private SheetChanges changes() {
        Optional<Integer> code = column(map.code());
        Optional<Integer> price = column(map.price());
        Optional<Integer> until = map.goodUntil().flatMap(this::column);
        if (faults.isEmpty()) {
            rows(new Columns(code.orElseThrow(), price.orElseThrow(), until));
        }
        return new SheetChanges(cells, faults);
    }

    private Optional<Integer> column(String head) {
        int row = map.headRow() - 1;
        int width = row < grid.rows().size() ? grid.rows().get(row).size() : 0;
        for (int column = 0; column < width; column++) {
            if (grid.at(row, column).equals(CellContent.words(head))) {
                return Optional.of(column);
            }
        }
        faults.add(new Fault(
                new Place(file, map.headRow(), 1, grid.cell(row, 0)),
                "no column \"" + head + "\"",
                "a head in row " + map.headRow() + " that says so",
                "correct the map or \"headRow\" in it"));
        return Optional.empty();
    }

    /** Where the list has what the map names. */
    private record Columns(int code, int price, Optional<Integer> until) {}

    private void rows(Columns columns) {
        int code = columns.code();
        TreeSet<String> missing = new TreeSet<>(map.items().keySet());
        TreeSet<String> seen = new TreeSet<>();
        for (int row = map.headRow(); row < grid.rows().size(); row++) {
            String number = plain(grid.at(row, code));
            String ours = map.items().get(number);
            if (ours == null) {
                continue;
            }
            missing.remove(number);
            if (!seen.add(number)) {
                fault(
                        row,
                        code,
                        "\"" + number + "\" a second time",
                        "each number once",
                        "take one of the two rows out");
            } else if (book.find(ours).isEmpty()) {
                fault(row, code, "the item " + ours, "a code of the price book", "correct \"items\" in the map");
            } else {
                item(row, columns, ours);
            }
        }
        missing.forEach(number -> fault(
                map.headRow() - 1,
                code,
                "no row for \"" + number + "\"",
                "a row for every number of the map",
                "ask the supplier, or take it out of \"items\" in the map"));
    }

    private void item(int row, Columns columns, String ours) {
        int price = columns.price();
        Optional<BigDecimal> amount = amount(grid.at(row, price));
        if (amount.isEmpty()) {
            fault(row, price, grid.at(row, price).shown(), "an amount of dollars", "write a plain number");
            return;
        }
        if (amount.get().signum() <= 0) {
            fault(
                    row,
                    price,
                    grid.at(row, price).shown() + " as a price",
                    "an amount above $0",
                    "ask the supplier, or take the number out of \"items\" in the map");
            return;
        }
        cells.add(new Changed(place(row, price), ours, map.what(), PriceColumn.dollars(amount.get())));
        columns.until().ifPresent(column -> until(row, column, ours));
    }

    private void until(int row, int column, String ours) {
        CellContent day = grid.at(row, column);
        if (day instanceof CellContent.Odd) {
            fault(row, column, day.shown(), "a date, or nothing", "write the date as a plain one");
        } else {
            cells.add(new Changed(place(row, column), ours, "goodUntil", plain(day)));
        }
    }

    private static Optional<BigDecimal> amount(CellContent content) {
        if (content instanceof CellContent.Figure number) {
            return Optional.of(number.value());
        }
        String text = content instanceof CellContent.Words words
                ? words.text().replace("$", "").strip()
                : "";
        return text.matches("-?(\\d{1,3}(,\\d{3})+|\\d{1,9})(\\.\\d{1,6})?")
                ? Optional.of(new BigDecimal(text.replace(",", "")))
                : Optional.empty();
    }

    private static String plain(CellContent content) {
        return content instanceof CellContent.Words words
                ? words.text()
                : content instanceof CellContent.Figure number ? number.value().toPlainString() : "";
    }

    private void fault(int row, int column, String found, String allowed, String fix) {
        faults.add(new Fault(place(row, column), found, allowed, fix));
    }

    private Place place(int row, int column) {
        return new Place(file, row + 1, column + 1, grid.cell(row, column));
    }
}
