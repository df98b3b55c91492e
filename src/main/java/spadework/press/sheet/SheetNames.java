// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.formula.SheetNameFormatter;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.ss.util.WorkbookUtil;
import spadework.press.sheet.SheetPlan.Cell;

/** The names of a workbook's sheets, cells and ranges. */
public final class SheetNames {
    private static final int LONGEST = 31;

    private final String template;
    private final Set<String> sheets = new HashSet<>();
    private final Map<String, Spread> spreads = new LinkedHashMap<>();

    SheetNames(String template) {
        this.template = template;
    }

    private record Spread(String sheet, int column, int first, int last) {}

    /** The name without the characters that a sheet's name may not have, told apart from the sheets before it. */
    String sheet(String wanted) {
        String safe = WorkbookUtil.createSafeSheetName(wanted, ' ').strip();
        String name = safe;
        for (int i = 2; !sheets.add(name.toLowerCase(Locale.ROOT)); i++) {
            String end = " " + i;
            name = safe.substring(0, Math.min(safe.length(), LONGEST - end.length())) + end;
        }
        return name;
    }

    /** Notes the names that a cell carries. */
    void note(Cell cell, String sheet, int column, int row) {
        cell.name().ifPresent(name -> {
            if (spreads.put(name, new Spread(sheet, column, row, row)) != null) {
                throw WorkbookReader.fault(template, cell.line(), "the name " + name + " is given twice", null);
            }
        });
        cell.range().ifPresent(name -> {
            Spread before = spreads.getOrDefault(name, new Spread(sheet, column, row, row - 1));
            if (!before.equals(new Spread(sheet, column, before.first(), row - 1))) {
                throw WorkbookReader.fault(template, cell.line(), "the range " + name + " is broken", null);
            }
            spreads.put(name, new Spread(sheet, column, before.first(), row));
        });
    }

    /** Every name with the cells it stands for, as {@code Price!$C$3:$C$7}, in the order in which they came. */
    Map<String, String> defined() {
        Map<String, String> defined = new LinkedHashMap<>();
        spreads.forEach((name, spread) -> defined.put(
                name, cells(spread.sheet(), spread.first(), spread.last(), spread.column(), spread.column())));
        return defined;
    }

    /** The cells from a corner to the other, from any sheet. */
    static String cells(String sheet, int firstRow, int lastRow, int firstColumn, int lastColumn) {
        CellReference first = new CellReference(sheet, firstRow, firstColumn, true, true);
        if (firstRow == lastRow && firstColumn == lastColumn) {
            return first.formatAsString();
        }
        return first.formatAsString() + ":" + new CellReference(lastRow, lastColumn, true, true).formatAsString();
    }

    /** Whole rows, from any sheet. */
    static String rows(String sheet, int first, int last) {
        return SheetNameFormatter.format(sheet) + "!$" + (first + 1) + ":$" + (last + 1);
    }
}
