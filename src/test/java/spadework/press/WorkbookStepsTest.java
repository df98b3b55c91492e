// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** The check list of a wall: the page's steps, in the page's words and under the page's numbers. */
class WorkbookStepsTest {
    private static XSSFWorkbook book;
    private static String page;

    @BeforeAll
    static void print() {
        Templates templates = Templates.bundled();
        book = WorkbookDump.open(
                WorkbookPress.print(templates, "scope", PaperworkFixtures.model(), PaperworkFixtures.ISSUED));
        page = plain(templates.fill("scope/page.ftlh", PaperworkFixtures.pageModel("scope")));
    }

    @Test
    void everyStepReadsAsOnThePage() {
        List<String> steps = column(2);
        assertThat(steps)
                .hasSizeGreaterThan(20)
                .allSatisfy(step -> assertThat(page).contains(plain(step)));
        assertThat(String.join(" ", steps)).doesNotContain("<").doesNotContain("&#");
    }

    @Test
    void theStepsAreNumberedWithoutAGap() {
        List<String> numbers = column(0);
        for (int i = 0; i < numbers.size(); i++) {
            assertThat(numbers.get(i)).isEqualTo(Integer.toString(i + 1));
        }
    }

    @Test
    void theStepsStandInTheOrderOfTheTrade() {
        assertThat(String.join("\n", column(2)).toLowerCase(Locale.ROOT))
                .containsSubsequence(
                        "dig",
                        "scrape",
                        "wash",
                        "dry",
                        "hold point a",
                        "cove",
                        "coat",
                        "hold point b",
                        "wash the footing",
                        "under the pipe",
                        "perforated pipe",
                        "washed stone",
                        "fabric over the top of the stone only",
                        "tee the footing drain",
                        "own solid line",
                        "hold point c",
                        "backfill in lifts",
                        "grade",
                        "haul");
    }

    private static List<String> column(int index) {
        return WorkbookDump.cells(book).stream()
                .filter(cell -> cell.getSheet().getSheetName().equals("Wall A"))
                .filter(cell -> cell.getRowIndex() > 2
                        && cell.getRow().getCell(1).toString().equals("☐"))
                .filter(cell -> cell.getColumnIndex() == index)
                .map(cell ->
                        index == 0 ? Integer.toString((int) cell.getNumericCellValue()) : cell.getStringCellValue())
                .toList();
    }

    /** The words alone: no tags, no lines to fill in, single spaces. */
    private static String plain(String text) {
        return text.replaceAll("<span class=\"line\"[^>]*>[^<]*</span>", "______")
                .replaceAll("<[^>]+>", "")
                .replace("&#39;", "'")
                .replace("&quot;", "\"")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
