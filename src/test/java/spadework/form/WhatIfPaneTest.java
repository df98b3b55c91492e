// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import javax.swing.JLabel;
import javax.swing.JSlider;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.view.ScenePanel;
import spadework.money.Dollars;

/** The price otherwise, by sliders: what it comes to, its range as a curve, the days as bars. */
@WindowTest
class WhatIfPaneTest {
    @TempDir
    Path folder;

    private static JSlider slider(OnScreen screen, String name) {
        return screen.all(JSlider.class, one -> ("slide " + name).equals(one.getName()))
                .get(0);
    }

    private static String text(OnScreen screen, String name) {
        return screen.ask(() -> screen.all(JLabel.class, one -> name.equals(one.getName()))
                .get(0)
                .getText());
    }

    private static Dollars price(OnScreen screen) {
        return Dollars.of(text(screen, "whatif price").replaceAll("[$,]", ""));
    }

    private static void press(OnScreen screen, JSlider slider, int key, int times) {
        screen.focus(slider);
        for (int i = 0; i < times; i++) {
            screen.robot().pressAndReleaseKey(key);
        }
        screen.settle();
    }

    @Test
    void slidersMovePriceCurveAndDays() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> screen.job().show(SidePane.WHATIF));
            screen.settle();
            Dollars asItIs = screen.session().total().orElseThrow();
            assertThat(price(screen)).isEqualTo(asItIs);
            ScenePanel days = screen.all(ScenePanel.class, one -> "days".equals(one.getName()))
                    .get(0);
            ScenePanel range = screen.all(ScenePanel.class, one -> "range".equals(one.getName()))
                    .get(0);
            String before = screen.ask(() -> range.getAccessibleContext().getAccessibleDescription());
            assertThat(before).contains("$");
            press(screen, slider(screen, "depth"), KeyEvent.VK_RIGHT, 12);
            assertThat(text(screen, "value depth")).isEqualTo("+12 in");
            assertThat(price(screen)).isGreaterThan(asItIs);
            assertThat(screen.ask(() -> range.getAccessibleContext().getAccessibleDescription()))
                    .isNotEqualTo(before);
            screen.picture("what-if");
            new FormRobot(screen, Draft.empty()).press(screen.job(), "whatif back");
            screen.settle();
            assertThat(price(screen)).isEqualTo(asItIs);
            String fast = screen.ask(() -> days.getAccessibleContext().getAccessibleDescription());
            press(screen, slider(screen, "production"), KeyEvent.VK_LEFT, 40);
            assertThat(price(screen)).isGreaterThan(asItIs);
            assertThat(screen.ask(() -> days.getAccessibleContext().getAccessibleDescription()))
                    .as("slower crews take more days")
                    .isNotEqualTo(fast);
            assertThat(screen.session().history().isSaved())
                    .as("nothing of it is in the job")
                    .isTrue();
        }
    }

    @Test
    void profitIsShownAndHiddenByOneKey() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> screen.job().show(SidePane.WHATIF));
            screen.settle();
            JSlider profit = slider(screen, "profit");
            assertThat(screen.ask(profit::isShowing)).isFalse();
            screen.robot().pressAndReleaseKey(KeyEvent.VK_F8);
            screen.settle();
            assertThat(screen.ask(profit::isShowing)).isTrue();
            Dollars asItIs = screen.session().total().orElseThrow();
            press(screen, profit, KeyEvent.VK_RIGHT, 5);
            assertThat(price(screen)).isGreaterThan(asItIs);
            assertThat(text(screen, "whatif more")).contains("left after overhead");
            screen.robot().pressAndReleaseKey(KeyEvent.VK_F8);
            screen.settle();
            assertThat(screen.ask(profit::isShowing)).isFalse();
            assertThat(price(screen)).as("hidden, it does not count").isEqualTo(asItIs);
            assertThat(text(screen, "whatif more")).doesNotContain("overhead");
        }
    }
}
