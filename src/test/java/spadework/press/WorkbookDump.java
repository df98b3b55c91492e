// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook as text: a line a cell, {@code sheet!A1 = NUMERIC 12.5 [#,##0.0]}, with its formula where it has one. */
public final class WorkbookDump {
    private WorkbookDump() {}

    public static XSSFWorkbook open(byte[] file) {
        try {
            return new XSSFWorkbook(new ByteArrayInputStream(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> lines(XSSFWorkbook book) {
        List<String> lines = new ArrayList<>();
        for (XSSFCell cell : cells(book)) {
            lines.add(line(cell));
        }
        return lines;
    }

    static List<XSSFCell> cells(XSSFWorkbook book) {
        List<XSSFCell> cells = new ArrayList<>();
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() != CellType.BLANK) {
                        cells.add((XSSFCell) cell);
                    }
                }
            }
        }
        return cells;
    }

    /** Every text in the workbook's cells. */
    public static List<String> texts(XSSFWorkbook book) {
        return cells(book).stream()
                .filter(cell -> cell.getCellType() == CellType.STRING)
                .map(XSSFCell::getStringCellValue)
                .toList();
    }

    /** Every figure by its place; of a formula the result that the file holds. */
    static Map<String, Double> figures(XSSFWorkbook book) {
        Map<String, Double> figures = new LinkedHashMap<>();
        for (XSSFCell cell : cells(book)) {
            if (type(cell) == CellType.NUMERIC) {
                figures.put(place(cell), cell.getNumericCellValue());
            }
        }
        return figures;
    }

    /** The figures of a named cell or range. */
    public static List<Double> named(XSSFWorkbook book, String name) {
        XSSFName found = book.getName(name);
        if (found == null) {
            throw new AssertionError("no name " + name);
        }
        String[] ends = found.getRefersToFormula().split("!")[1].split(":");
        CellReference first = new CellReference(ends[0]);
        CellReference last = new CellReference(ends[ends.length - 1]);
        List<Double> figures = new ArrayList<>();
        for (int row = first.getRow(); row <= last.getRow(); row++) {
            figures.add(book.getSheet(found.getSheetName())
                    .getRow(row)
                    .getCell(first.getCol())
                    .getNumericCellValue());
        }
        return figures;
    }

    private static String line(XSSFCell cell) {
        Object value = type(cell) == CellType.NUMERIC ? cell.getNumericCellValue() : cell.getStringCellValue();
        String formula = cell.getCellType() == CellType.FORMULA ? " =" + cell.getCellFormula() : "";
        String format = cell.getCellStyle().getDataFormatString();
        return place(cell) + " = " + type(cell) + " " + value + " [" + format + "]" + formula;
    }

    static String place(XSSFCell cell) {
        return cell.getSheet().getSheetName() + "!" + cell.getReference();
    }

    private static CellType type(XSSFCell cell) {
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }
}
