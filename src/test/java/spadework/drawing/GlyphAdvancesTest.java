// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.drawing.shape.GlyphAdvances;
import spadework.drawing.shape.LabelText;

class GlyphAdvancesTest {

    /** The outside judge is the font file, read by the machine's own font code. */
    @ParameterizedTest(name = "bold: {0}")
    @ValueSource(booleans = {false, true})
    void everyLetterIsAsWideAsInTheFontFile(boolean bold) {
        for (char letter = ' '; letter <= '~'; letter++) {
            assertThat(GlyphAdvances.of(letter, bold))
                    .as(String.valueOf(letter))
                    .isCloseTo(PrintedFace.width(String.valueOf(letter), 1, bold), within(0.001));
        }
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {"Footing 8 in thick, 6 in out", "falls 4½ in (0.5%)", "WWWW", "Lot line 18 ft", "…", "Ñ é ü"})
    void noTextIsWiderThanItIsTakenToBe(String text) {
        double printed = PrintedFace.width(text, 9, false);

        assertThat(LabelText.width(text, 9)).isGreaterThanOrEqualTo(printed);
        assertThat(LabelText.width(text, 9)).isLessThan(printed * 2.1);
    }
}
