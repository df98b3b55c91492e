// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import javax.swing.UIManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.form.WindowTest;

/** Words and marks stand out from what lies under them: WCAG 2.1, 1.4.3 (text, 4.5 to 1) and 1.4.11 (marks, 3 to 1). */
@WindowTest
class ContrastTest {
    @AfterEach
    void light() {
        GuiActionRunner.execute(() -> Theme.apply(false));
    }

    @ParameterizedTest
    @CsvSource({
        "Label.foreground, Panel.background, 4.5",
        "TextField.foreground, TextField.background, 4.5",
        "TextField.placeholderForeground, TextField.background, 4.5",
        "Table.foreground, Table.background, 4.5",
        "Table.selectionForeground, Table.selectionBackground, 4.5",
        "Table.selectionInactiveForeground, Table.selectionInactiveBackground, 4.5",
        "List.selectionForeground, List.selectionBackground, 4.5",
        "Button.foreground, Button.background, 4.5",
        "Spadework.fault, Panel.background, 4.5",
        "Spadework.fault, List.background, 4.5",
        "Spadework.missing, Panel.background, 4.5",
        "Spadework.quiet, Panel.background, 4.5",
        "Spadework.quiet, TextField.background, 4.5",
        "Spadework.water, Panel.background, 4.5",
        "Panel.background, Spadework.water, 4.5",
        "Spadework.water, TextField.background, 3",
        "Spadework.soil, Panel.background, 3"
    })
    void standsOutLightAndDark(String on, String under, double least) {
        for (boolean dark : new boolean[] {false, true}) {
            GuiActionRunner.execute(() -> Theme.apply(dark));
            double ratio = ratio(UIManager.getColor(on), UIManager.getColor(under));
            assertThat(ratio)
                    .as("%s on %s, %s: %.2f to 1", on, under, dark ? "dark" : "light", ratio)
                    .isGreaterThanOrEqualTo(least);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Table.foreground, Table.background",
        "Table.selectionForeground, Table.selectionBackground",
        "Table.selectionInactiveForeground, Table.selectionInactiveBackground"
    })
    void figuresStandOutOverTheirBars(String on, String under) {
        for (boolean dark : new boolean[] {false, true}) {
            GuiActionRunner.execute(() -> Theme.apply(dark));
            Color bar = over(UIManager.getColor("Spadework.water"), UIManager.getColor(under));
            double ratio = ratio(UIManager.getColor(on), bar);
            assertThat(ratio)
                    .as("%s over a bar on %s, %s: %.2f to 1", on, under, dark ? "dark" : "light", ratio)
                    .isGreaterThanOrEqualTo(4.5);
        }
    }

    private static Color over(Color bar, Color under) {
        double share = ShareBarCell.FAINT / 255.0;
        return new Color(
                (int) Math.round(share * bar.getRed() + (1 - share) * under.getRed()),
                (int) Math.round(share * bar.getGreen() + (1 - share) * under.getGreen()),
                (int) Math.round(share * bar.getBlue() + (1 - share) * under.getBlue()));
    }

    /** Contrast ratio by WCAG 2.1: lighter plus 0.05 over darker plus 0.05, of relative luminances. */
    private static double ratio(Color one, Color other) {
        double first = luminance(one) + 0.05;
        double second = luminance(other) + 0.05;
        return Math.max(first, second) / Math.min(first, second);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
