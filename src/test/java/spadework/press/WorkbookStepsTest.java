// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spadework.paperwork.scope.ScopeStep;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** The check list of the workbook: the page's steps, in the page's words and under the page's numbers. */
class WorkbookStepsTest {
    private static XSSFWorkbook book;

    @BeforeAll
    static void print() {
        book = WorkbookDump.open(
                WorkbookPress.print(Templates.bundled(), "scope", PaperworkFixtures.model(), PaperworkFixtures.ISSUED));
    }

    @Test
    void everyStepStandsOnItsSheetUnderItsNumber() {
        assertThat(column("Before digging", 2))
                .isEqualTo(texts(PageFixtures.steps().before()));
        assertThat(column("Wall A", 2))
                .isEqualTo(texts(PageFixtures.steps().ofWall("A").steps()));
        assertThat(column("Pipes and ground", 2))
                .isEqualTo(texts(PageFixtures.steps().pipes()));
        assertThat(column("Wall A", 0)).containsExactly("2", "3", "4");
        assertThat(column("Pipes and ground", 0)).containsExactly("6");
    }

    @Test
    void thereIsAPlaceForWhatIsWrittenDown() {
        assertThat(column("Wall A", 3))
                .containsExactly(
                        "",
                        "☐ Photos of both\nContractor: ________\nHomeowner: ________\nDate: ________",
                        "Coat 1, wet mils: ____ ____ ____ ____ ____");
    }

    private static List<String> texts(List<ScopeStep> steps) {
        return steps.stream()
                .map(step -> step.hold() == 0
                        ? step.text() + (step.rule().isEmpty() ? "" : " (" + step.rule() + ")")
                        : "Hold point " + step.hold() + ". " + step.text())
                .toList();
    }

    private static List<String> column(String sheet, int index) {
        return WorkbookDump.cells(book).stream()
                .filter(cell -> cell.getSheet().getSheetName().equals(sheet))
                .filter(cell -> cell.getRow().getCell(1) != null
                        && cell.getRow().getCell(1).toString().equals("☐"))
                .filter(cell -> cell.getColumnIndex() == index)
                .map(cell ->
                        index == 0 ? Integer.toString((int) cell.getNumericCellValue()) : cell.getStringCellValue())
                .toList();
    }
}
