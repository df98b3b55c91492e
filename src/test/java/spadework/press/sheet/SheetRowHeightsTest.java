// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.fontbox.afm.AFMParser;
import org.apache.fontbox.afm.CharMetric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetRowHeightsTest {

    /** The published metrics of Helvetica, as a PDF library ships them. Quotes are called by name there. */
    @Test
    void lettersAreAsWideAsPublished() throws IOException {
        try (InputStream published =
                AFMParser.class.getResourceAsStream("/org/apache/pdfbox/resources/afm/Helvetica.afm")) {
            List<CharMetric> metrics = new AFMParser(published)
                    .parse().getCharMetrics().stream()
                            .filter(one -> one.getCharacterCode() >= ' ' && one.getCharacterCode() <= '~')
                            .filter(one -> !List.of("quoteright", "quoteleft").contains(one.getName()))
                            .toList();
            assertThat(metrics).hasSize(93);
            assertThat(metrics)
                    .allSatisfy(one -> assertThat(SheetRowHeights.width(Character.toString(one.getCharacterCode())))
                            .as(one.getName())
                            .isEqualTo(one.getWx() / 1000.0));
        }
    }

    @ParameterizedTest(name = "{1} characters of {0} in a column of 20 take {2} lines")
    @CsvSource(textBlock = """
            # a column of 20 characters is 140 pixels or 105 points wide: 17 digits of 5.56 points, 40 letters i of 2.22
            # points, but not 12 letters W of 9.44 points; a word longer than the column breaks where it must
            0,    1,  1
            0,    17, 1
            0,    20, 2
            i,    40, 1
            W,    12, 2
            """)
    void aLineHoldsWhatFits(String letter, int count, int lines) {
        assertThat(height(letter.repeat(count))).isEqualTo(height("x" + "\nx".repeat(lines - 1)));
    }

    @Test
    void wordsBreakAtSpacesAndParagraphsStartALine() {
        assertThat(height("one two three four five six")).isEqualTo(height("x\nx"));
        assertThat(height("one\ntwo\nthree")).isGreaterThan(height("one\ntwo"));
    }

    @Test
    void noRowIsHigherThanASpreadsheetAllows() {
        assertThat(height("x\n".repeat(500))).isEqualTo(409);
    }

    private static double height(String text) {
        String filled = """
                <workbook title="t" subject="s" language="en-US" creator="c">
                <style name="text" font="Arial" size="10"/>
                <sheet name="One"><column key="a" width="20"/><row><cell>%s</cell></row></sheet></workbook>""".formatted(text);
        WorkbookPlan plan = WorkbookReader.read("x.ftlx", filled);
        SheetPlan sheet = plan.sheets().get(0);
        return SheetRowHeights.of(plan, sheet, sheet.rows().get(0));
    }
}
