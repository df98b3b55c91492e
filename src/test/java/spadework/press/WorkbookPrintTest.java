// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.samples.Samples;

/** A workbook is drawn together to the width of its page: what is printed can still be read. */
class WorkbookPrintTest {
    private static final double SMALLEST = 8;

    /** Inches of a column's character where the widest of the usual faces stands in for the one that is named. */
    private static final double WIDEST_CHARACTER = 0.0866;

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"block-basement-to-swale", "crawl-space-between-houses", "added-wall-then-closed"})
    void noLetterOfTheCostSheetIsPrintedSmallerThanEightPoints(String sample) throws IOException {
        byte[] book = Samples.printed(Path.of("sample-quotes", sample)).get("kept/cost-sheet.xlsx");
        try (XSSFWorkbook workbook = WorkbookDump.open(book)) {
            for (Sheet sheet : workbook) {
                double printed = smallest((XSSFSheet) sheet) * scale((XSSFSheet) sheet);
                assertThat(printed).as(sheet.getSheetName()).isGreaterThanOrEqualTo(SMALLEST);
            }
        }
    }

    /** A spreadsheet allows a row 409 points: one that would need more has lost its end. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"poured-basement-with-sump", "block-basement-to-swale"})
    void noWorkingIsCutOff(String sample) throws IOException {
        byte[] book = Samples.printed(Path.of("sample-quotes", sample)).get("kept/cost-sheet.xlsx");
        try (XSSFWorkbook workbook = WorkbookDump.open(book)) {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    assertThat(row.getHeightInPoints())
                            .as(sheet.getSheetName() + ", row " + (row.getRowNum() + 1))
                            .isLessThan(409);
                }
            }
        }
    }

    private static double scale(XSSFSheet sheet) {
        double wide = sheet.getPrintSetup().getLandscape() ? 11 : 8.5;
        double room = wide - sheet.getMargin(PageMargin.LEFT) - sheet.getMargin(PageMargin.RIGHT);
        int columns = IntStream.range(0, 1 + sheet.getLastRowNum())
                .mapToObj(sheet::getRow)
                .filter(row -> row != null)
                .mapToInt(Row::getLastCellNum)
                .max()
                .orElse(0);
        double characters = IntStream.range(0, columns)
                .mapToDouble(i -> sheet.getColumnWidth(i) / 256.0)
                .sum();
        return Math.min(tall(sheet), room / (characters * WIDEST_CHARACTER));
    }

    /** A sheet that has to fit on one page is drawn together to its height as well; an inch has 72 points. */
    private static double tall(XSSFSheet sheet) {
        if (sheet.getPrintSetup().getFitHeight() != 1) {
            return 1;
        }
        double room = 11 - sheet.getMargin(PageMargin.TOP) - sheet.getMargin(PageMargin.BOTTOM);
        double points = IntStream.rangeClosed(0, sheet.getLastRowNum())
                .mapToDouble(i -> sheet.getRow(i) == null
                        ? sheet.getDefaultRowHeightInPoints()
                        : sheet.getRow(i).getHeightInPoints())
                .sum();
        return Math.min(1, 72 * room / points);
    }

    private static int smallest(XSSFSheet sheet) {
        List<Integer> sizes = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() != CellType.BLANK) {
                    sizes.add((int) sheet.getWorkbook()
                            .getFontAt(cell.getCellStyle().getFontIndex())
                            .getFontHeightInPoints());
                }
            }
        }
        return sizes.stream().min(Integer::compare).orElse(10);
    }
}
