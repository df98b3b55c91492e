// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import spadework.press.sheet.SheetPlan.Cell;
import spadework.press.sheet.SheetPlan.CellKind;

/** How a figure of the sheet language is read and shown. */
public final class SheetNumbers {
    /** The first figure of what is printed. */
    private static final Pattern FIGURE = Pattern.compile("^[^0-9.]*([0-9,]*\\.?[0-9]*).*$");

    private static final String MONEY = "\"$\"#,##0.00;\u2212\"$\"#,##0.00";
    private static final String DATE = "[$-409]mmmm d, yyyy";

    private SheetNumbers() {}

    /**
     * The value of a number, amount or percentage; {@code 12%} is 0.12.
     *
     * @throws NumberFormatException if the content is not a plain decimal
     */
    static BigDecimal value(Cell cell) {
        String content = cell.content();
        if (cell.kind() == CellKind.PERCENT && content.endsWith("%")) {
            return new BigDecimal(content.substring(0, content.length() - 1).strip()).movePointLeft(2);
        }
        return new BigDecimal(content);
    }

    /** The number format of a cell. */
    static String format(Cell cell) {
        return switch (cell.gives()) {
            case MONEY -> MONEY;
            case DATE -> DATE;
            case PERCENT -> "0" + decimals(percentDecimals(cell)) + "%";
            case NUMBER -> "#,##0" + decimals(numberDecimals(cell)) + ";\u2212#,##0" + decimals(numberDecimals(cell));
            default -> "General";
        };
    }

    private static int numberDecimals(Cell cell) {
        return cell.like()
                .map(SheetNumbers::decimalsOf)
                .orElseGet(() -> cell.kind() == CellKind.FORMULA ? 2 : tidyScale(value(cell)));
    }

    private static int percentDecimals(Cell cell) {
        Optional<Integer> like = cell.like().map(SheetNumbers::decimalsOf);
        return like.orElseGet(() ->
                cell.kind() == CellKind.FORMULA ? 1 : tidyScale(value(cell).movePointRight(2)));
    }

    private static int tidyScale(BigDecimal value) {
        return Math.max(0, value.stripTrailingZeros().scale());
    }

    /** Decimals of a figure as printed, as 1 for {@code 1,306.5 cf}. */
    private static int decimalsOf(String printed) {
        String figure = FIGURE.matcher(printed).replaceFirst("$1");
        int point = figure.indexOf('.');
        return point < 0 ? 0 : figure.length() - point - 1;
    }

    private static String decimals(int count) {
        return count == 0 ? "" : "." + "0".repeat(count);
    }
}
