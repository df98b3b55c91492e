// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;

class WholeMeasuresTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            falls 4½ in (0.5%)               | falls 4½_in (0.5%)
            4 ft 8 in to 5 ft 6½ in          | 4_ft_8_in to 5_ft_6½_in
            7.6 gal on 1,132 sf; 60 mil dry  | 7.6_gal on 1,132_sf; 60_mil dry
            ½ in over it                     | ½_in over it
            Wall A in 2 coats, 5 inches      | Wall A in 2 coats, 5 inches
            a pipe (R1, 78 ft) to O2         | a pipe (R1, 78_ft) to O2
            """)
    void noLineEndsBetweenAFigureAndItsUnit(String text, String kept) {
        assertThat(WholeMeasures.kept(text).replace('\u00a0', '_')).isEqualTo(kept);
    }

    @Test
    void onlyTextThatIsReadIsTouched() {
        Document page = PageSource.read(
                "page",
                "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>5 ft</title></head>"
                        + "<body><p>5 ft <b>6 in</b></p></body></html>");

        WholeMeasures.keep(page);

        assertThat(page.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("5 ft");
        assertThat(page.getElementsByTagName("p").item(0).getTextContent()).isEqualTo("5\u00a0ft 6\u00a0in");
    }
}
