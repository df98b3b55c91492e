// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.util.List;

/**
 * A sheet as it was read. Rows and columns count from 0.
 *
 * @param name of the sheet; empty for a list without sheets
 */
public record Grid(String name, List<List<CellContent>> rows) {

    public Grid {
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** What a cell holds; nothing outside of what was written. */
    public CellContent at(int row, int column) {
        List<CellContent> cells = row < rows.size() ? rows.get(row) : List.of();
        return column < cells.size() ? cells.get(column) : CellContent.empty();
    }

    /** Whether nothing stands in a row. */
    public boolean isBlank(int row) {
        return rows.get(row).stream().allMatch(CellContent.empty()::equals);
    }

    /** A cell as a spreadsheet names it, with its sheet, as {@code Prices!E7}. */
    public String cell(int row, int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
            letters.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return (name.isEmpty() ? "" : name + "!") + letters + (row + 1);
    }
}
