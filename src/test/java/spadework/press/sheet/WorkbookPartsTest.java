// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.SstDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;
import spadework.press.PaperworkFixtures;
import spadework.press.WorkbookDump;

/** The parts of a printed workbook against the schema of ECMA-376 part 1 as the reference library carries it. */
class WorkbookPartsTest {
    private static final String EVERYTHING = """
            <workbook title="t &amp; t" subject="s" language="en-US" creator="c" paper="letter">
            <footer left="A &amp; B" center="" right="Page {page} of {pages}"/>
            <style name="text" font="Arial" size="10"/>
            <style name="loud" font="Arial" size="12.5" bold="yes" italic="yes" color="14464B" tint="E9EFF0"
              over="medium" under="hair" align="center"/>
            <sheet name="One &amp; all" landscape="yes" pages="1"><column key="a" width="10"/><column key="b" width="8.5"/>
            <row style="loud"><cell to="b">Head</cell></row>
            <row head="yes"><cell>What</cell><cell>How much</cell></row>
            <row><cell>=x</cell><cell kind="money" range="sums">1.50</cell></row>
            <row><cell kind="date">2026-03-03</cell><cell kind="percent" range="sums">12%</cell></row>
            <row><cell kind="formula" gives="text">IF(all_sums&gt;1,"more","less")</cell>
              <cell kind="formula" name="all_sums">SUM(sums)</cell></row>
            <row><cell kind="formula" gives="number">all_sums&gt;1</cell></row>
            </sheet><sheet name="It's two"><column key="a" width="10"/><row/></sheet></workbook>""";

    @Test
    void everyPartIsValid() throws IOException, XmlException {
        Map<String, byte[]> parts = parts(written(EVERYTHING));
        Map<String, XmlObject> read = new TreeMap<>();
        for (String sheet : List.of("xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml")) {
            read.put(sheet, WorksheetDocument.Factory.parse(new ByteArrayInputStream(parts.get(sheet))));
        }
        read.put("styles", StyleSheetDocument.Factory.parse(new ByteArrayInputStream(parts.get("xl/styles.xml"))));
        read.put("words", SstDocument.Factory.parse(new ByteArrayInputStream(parts.get("xl/sharedStrings.xml"))));
        read.put("book", WorkbookDocument.Factory.parse(new ByteArrayInputStream(parts.get("xl/workbook.xml"))));
        read.forEach((name, part) -> {
            List<XmlError> faults = new ArrayList<>();
            part.validate(new XmlOptions().setErrorListener(faults));
            assertThat(faults).as(name).isEmpty();
        });
    }

    @Test
    void aFormulaKeepsItsResultWhateverItsKind() {
        XSSFWorkbook book = WorkbookDump.open(written(EVERYTHING));
        XSSFCell words = book.getSheetAt(0).getRow(4).getCell(0);
        assertThat(words.getCellFormula()).isEqualTo("IF(all_sums>1,\"more\",\"less\")");
        assertThat(words.getStringCellValue()).isEqualTo("more");
        assertThat(book.getSheetAt(0).getRow(4).getCell(1).getNumericCellValue())
                .isEqualTo(1.62);
        assertThat(book.getSheetAt(0).getRow(5).getCell(0).getBooleanCellValue())
                .isTrue();
    }

    @ParameterizedTest(name = "[{index}]")
    @ValueSource(
            strings = {
                "  two spaces before and after  ",
                "a line\nand another",
                "a return\rin the middle",
                "_x0041_ is not A",
                "<b> & \"quotes\" ]]>",
                "a house \uD83C\uDFE0 and a tree \uD83C\uDF33",
                "\u05E9\u05DC\u05D5\u05DD \u200F",
                "=HYPERLINK(\"http://example.com\")"
            })
    void wordsComeBackAsTheyWere(String words) {
        String filled = """
                <workbook title="t" subject="s" language="en-US" creator="c"><style name="text" font="Arial" size="10"/>
                <sheet name="One"><column key="a" width="10"/><row><cell>%s</cell></row></sheet></workbook>""".formatted(words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\r", "&#13;"));
        XSSFWorkbook book = WorkbookDump.open(written(filled));
        assertThat(book.getSheetAt(0).getRow(0).getCell(0).getStringCellValue()).isEqualTo(words);
    }

    private static byte[] written(String filled) {
        return WorkbookWriter.write("x.ftlx", WorkbookReader.read("x.ftlx", filled), PaperworkFixtures.ISSUED);
    }

    private static Map<String, byte[]> parts(byte[] file) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), in.readAllBytes());
            }
        }
        return parts;
    }
}
