// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
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

    /** Writes every name into the workbook. */
    void define(XSSFWorkbook book) {
        spreads.forEach((called, spread) -> {
            Name name = book.createName();
            name.setNameName(called);
            CellReference first = corner(spread, spread.first());
            name.setRefersToFormula(
                    spread.first() == spread.last()
                            ? first.formatAsString()
                            : new AreaReference(first, corner(spread, spread.last()), SpreadsheetVersion.EXCEL2007)
                                    .formatAsString());
        });
    }

    private static CellReference corner(Spread spread, int row) {
        return new CellReference(spread.sheet(), row, spread.column(), true, true);
    }
}
