// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.poi.EmptyFileException;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads tables from files as they are. Nothing in them is worked out: a formula is reported as one. */
public final class Tables {
    private static final MathContext SHOWN = new MathContext(15);

    private Tables() {}

    /**
     * Reads a sheet of a workbook.
     *
     * @param name of the sheet; the first one where it is left out
     * @return nothing where the workbook has no such sheet
     * @throws IOException if the bytes are no workbook
     */
    public static Optional<Grid> workbook(byte[] file, Optional<String> name) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(file))) {
            Sheet sheet = name.isPresent() ? book.getSheet(name.get()) : book.getSheetAt(0);
            return sheet == null ? Optional.empty() : Optional.of(grid(sheet));
        } catch (UnsupportedFileFormatException
                | EmptyFileException
                | OpenXML4JRuntimeException
                | org.apache.poi.ooxml.POIXMLException noWorkbook) {
            throw new IOException("it is no XLSX workbook", noWorkbook);
        }
    }

    /** Reads comma-separated values in UTF-8; every cell is words. */
    public static Grid csv(byte[] file) throws IOException {
        String text = new String(file, StandardCharsets.UTF_8);
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<List<CellContent>> rows = new ArrayList<>();
        try (CSVParser parser =
                CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get().parse(new StringReader(plain))) {
            parser.forEach(
                    record -> rows.add(record.stream().map(CellContent::words).toList()));
        }
        return new Grid("", rows);
    }

    private static Grid grid(Sheet sheet) {
        List<List<CellContent>> rows = new ArrayList<>();
        for (int r = 0; r <= sheet.getLastRowNum(); r++) {
            Row row = sheet.getRow(r);
            List<CellContent> cells = new ArrayList<>();
            for (int c = 0; row != null && c < row.getLastCellNum(); c++) {
                cells.add(content(row.getCell(c)));
            }
            rows.add(cells);
        }
        return new Grid(sheet.getSheetName(), rows);
    }

    /** To the 15 digits that spreadsheets show: what was figured as 34.800000000000004 is 34.8 to who looks at it. */
    private static BigDecimal number(double value) {
        return BigDecimal.valueOf(value).round(SHOWN).stripTrailingZeros();
    }

    private static CellContent content(Cell cell) {
        if (cell == null) {
            return CellContent.empty();
        }
        return switch (cell.getCellType()) {
            case STRING -> CellContent.words(cell.getStringCellValue());
            case NUMERIC ->
                DateUtil.isCellDateFormatted(cell)
                        ? new CellContent.Words(
                                cell.getLocalDateTimeCellValue().toLocalDate().toString())
                        : new CellContent.Figure(number(cell.getNumericCellValue()));
            case FORMULA -> new CellContent.Odd("the formula =" + cell.getCellFormula());
            case BOOLEAN -> new CellContent.Odd(String.valueOf(cell.getBooleanCellValue()));
            case ERROR -> new CellContent.Odd("an error value");
            case BLANK, _NONE -> CellContent.empty();
        };
    }
}
