// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.press.PaperworkFixtures;
import spadework.press.WorkbookDump;
import spadework.press.template.TemplateFault;

/** The sheet language: what it says and how its faults are told. */
class WorkbookReaderTest {
    private static final String FRAME = """
            <workbook title="t" subject="s" language="en-US" creator="c" paper="a4">
            <style name="text" font="Arial" size="10"/>
            <sheet name="One"><column key="a" width="10"/><column key="b" width="10"/><column key="c" width="10"/>
            %s
            </sheet></workbook>""";

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            <row><cell knd="text">x</cell></row>                              | line 4 of the sheets it gave: <cell>: found knd, allowed: kind, gives
            <row><cell kind="words">x</cell></row>                            | kind is words, allowed: text, number, money, percent, date, formula
            <row><cell>1</cell><cell at="a">2</cell></row>                    | there is no free column for this cell among [a, b, c]
            <row><cell to="d">1</cell></row>                                  | there is no free column for this cell among [a, b, c]
            <row><cell style="loud">1</cell></row>                            | there is no style loud
            <row><cell kind="money">12,50</cell></row>                        | the cell holds 12,50, which is not a MONEY it can show
            <row><cell kind="date">3 March</cell></row>                       | the cell holds 3 March, which is not a DATE it can show
            <row><cell kind="formula">SUM(</cell></row>                       | line 4 of the sheets it gave: Parse error
            <row><cell kind="formula">{d}*2</cell></row>                      | there is no column d
            <row><cell kind="formula">no_such_name</cell></row>               | Specified named range 'no_such_name' does not exist
            <row><cell kind="formula">1/0</cell></row>                        | 1/0 gives #DIV/0!
            <row><cell name="x_x">1</cell><cell name="x_x">1</cell></row>     | the name x_x is given twice
            <row><cell range="r_r">1</cell></row><row/><row><cell range="r_r">1</cell></row> | the range r_r is broken
            <rows/>                                                           | found <rows>, allowed here: column or row
            <row>words</row>                                                  | it is malformed
            """)
    void aFaultSaysWhereWhatAndWhatIsAllowed(String rows, String message) {
        assertThatThrownBy(() -> write(rows))
                .isInstanceOf(TemplateFault.class)
                .hasMessageStartingWith("x.ftlx: line ")
                .hasMessageContaining(message);
    }

    @Test
    void anExternalEntityIsNeverRead() {
        String filled = "<!DOCTYPE workbook [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>"
                + FRAME.formatted("<row><cell>&e;</cell></row>");
        assertThatThrownBy(() -> WorkbookReader.read("x.ftlx", filled)).isInstanceOf(TemplateFault.class);
    }

    @Test
    void namesRangesAndColumnsStandForCells() {
        XSSFWorkbook book = write("""
                <row><cell kind="number" range="counts">2</cell><cell kind="money">1.25</cell>
                <cell kind="formula" range="amounts">{a}*{b}</cell></row>
                <row><cell kind="number" range="counts">3</cell><cell kind="money">2.50</cell>
                <cell kind="formula" range="amounts">{a}*{b}</cell></row>
                <row><cell to="b">All</cell><cell kind="formula" name="all_amounts">SUM(amounts)</cell></row>""");
        assertThat(WorkbookDump.named(book, "counts")).containsExactly(2.0, 3.0);
        assertThat(WorkbookDump.named(book, "all_amounts")).containsExactly(10.0);
        assertThat(book.getSheetAt(0).getMergedRegions())
                .hasToString("[org.apache.poi.ss.util.CellRangeAddress [A3:B3]]");
        assertThat(book.getSheetAt(0).getPrintSetup().getPaperSize()).isEqualTo((short) 9);
    }

    @ParameterizedTest(name = "{0} {1} like {2} shows as {3}")
    @CsvSource(delimiter = '|', textBlock = """
            percent | 0.12     |            | 12%
            percent | 0.0625   |            | 6.25%
            percent | 33.3%   |            | 33.3%
            number  | 46       | 46.0 cy    | 46.0
            number  | 1306.5   | 1,306.5 cf | 1,306.5
            number  | 12.50    |            | 12.5
            money   | -20      |            | −$20.00
            money   | 1234.5   |            | $1,234.50
            date    | 2026-03-03 |          | March 3, 2026
            """)
    void aFigureShowsAsOnPaper(String kind, String content, String like, String shown) {
        String attribute = like == null ? "" : " like=\"" + like + "\"";
        XSSFWorkbook book = write("<row><cell kind=\"" + kind + "\"" + attribute + ">" + content + "</cell></row>");
        DataFormatter formatter = new DataFormatter(Locale.US);
        assertThat(formatter.formatCellValue(book.getSheetAt(0).getRow(0).getCell(0)))
                .isEqualTo(shown);
    }

    @Test
    void sheetNamesAreMadeSafeAndToldApart() {
        SheetNames names = new SheetNames("x.ftlx");
        assertThat(List.of(
                        names.sheet("Wall A/B"),
                        names.sheet("wall a b"),
                        names.sheet("Wall with a name that is longer than a sheet's"),
                        names.sheet("Wall with a name that is longer than a tab's")))
                .containsExactly(
                        "Wall A B", "wall a b 2", "Wall with a name that is longer", "Wall with a name that is long 2");
    }

    private static XSSFWorkbook write(String rows) {
        WorkbookPlan plan = WorkbookReader.read("x.ftlx", FRAME.formatted(rows));
        return WorkbookDump.open(WorkbookWriter.write("x.ftlx", plan, PaperworkFixtures.ISSUED));
    }
}
