// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** Whatever a customer typed prints as the characters it is, in a cell of text, and is never run. */
class WorkbookTypedTextTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("typed")
    void typedTextStaysText(String what, String typed, String printed, boolean quoted) {
        Map<String, Object> model =
                Map.of("proposal", PaperworkFixtures.proposal(PaperworkFixtures.head(typed), typed));
        byte[] file = WorkbookPress.print(Templates.bundled(), "proposal", model, PaperworkFixtures.ISSUED);
        XSSFWorkbook book = WorkbookDump.open(file);
        for (XSSFCell cell : List.of(
                book.getSheet("Summary").getRow(5).getCell(0),
                book.getSheet("Price").getRow(2).getCell(0))) {
            assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
            assertThat(cell.getStringCellValue()).isEqualTo(printed);
            assertThat(cell.getCellStyle().getQuotePrefixed()).isEqualTo(quoted);
            assertThat(cell.getHyperlink()).isNull();
        }
        assertThat(book.getProperties().getCoreProperties().getTitle()).isEqualTo("Proposal: " + oneLine(printed));
        assertThat(WorkbookDump.named(book, "job_total")).containsExactly(13050.69);
    }

    private static Stream<Arguments> typed() {
        return Stream.of(
                row("a template's expression", "${1+1}", false),
                row("a template's directive", "<#if true>x</#if>", false),
                row("an expression in the other syntax", "#{7*7} [=1+1] ${.now}", false),
                row("a formula", "=HYPERLINK(\"http://x.example\")", true),
                row("a command in a formula", "=cmd|' /C calc'!A0", true),
                row("a plus sign first", "+1", true),
                row("a minus sign first", "-1", true),
                row("an at sign first", "@SUM(A1:A9)", true),
                row("a number", "0012", false),
                row("markup", "<script>alert(1)</script>", false),
                row("an entity", "&lt;b&gt; &amp; &#65; ]]>", false),
                row("a right-to-left override", "abc\u202Edef\u200F", false),
                row("quotes and apostrophes", "\"O'Brien's\" ″ ′ ½", false),
                row("what a cell's own coding looks like", "_x0041_ and _x005F_", false),
                row("a column of the sheet language", "{price}", false),
                row("a footer code", "&P &[Page] {page}", false),
                row("letters beyond the first plane", "\uD83D\uDC27 水", false),
                Arguments.of("a control character", "bell\u0007 and null\u0000", "bell\u2407 and null\u2400", false),
                Arguments.of("half a letter", "x\uD800y", "x\uFFFDy", false));
    }

    private static Arguments row(String what, String typed, boolean quoted) {
        return Arguments.of(what, typed, typed, quoted);
    }

    private static String oneLine(String text) {
        return text.replace('\n', ' ');
    }
}
