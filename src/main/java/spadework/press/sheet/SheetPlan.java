// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.List;
import java.util.Optional;

/**
 * A sheet as a template describes it.
 *
 * @param onePage true when it is made to fit one page, not only one page wide
 */
public record SheetPlan(String name, boolean landscape, boolean onePage, List<Column> columns, List<Row> rows) {

    /**
     * A column.
     *
     * @param key by which cells and formulas of the template call it
     * @param width in characters
     */
    public record Column(String key, double width) {}

    /**
     * A row.
     *
     * @param head true for the row that heads the table: it stays in sight and is repeated on every page
     */
    public record Row(String style, boolean head, List<Cell> cells) {}

    /**
     * A cell.
     *
     * @param gives for a formula, the kind of its result; otherwise the same as {@code kind}
     * @param at key of its column
     * @param to key of the column up to which it spreads; {@code at} for a single cell
     * @param name by which formulas call it
     * @param range by which formulas call it together with the cells above and below it that say the same
     * @param like a printed figure with as many decimals as this one shows
     * @param line of the filled template
     */
    public record Cell(
            CellKind kind,
            CellKind gives,
            String style,
            String at,
            String to,
            Optional<String> name,
            Optional<String> range,
            Optional<String> like,
            String content,
            int line) {}

    /** What a cell holds. */
    public enum CellKind {
        TEXT,
        NUMBER,
        MONEY,
        PERCENT,
        DATE,
        FORMULA
    }

    /** Where a column stands, from 0; −1 when there is none with that key. */
    int indexOf(String key) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }
}
