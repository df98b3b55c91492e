// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.form.kit.Theme;
import spadework.form.page.JobPage;

/** Pictures of every page and pane, light and dark, are kept in target/screens to be looked at. */
@WindowTest
class ScreensTest {
    private static final List<String> PANES = List.of("page", "drawing", "working", "found", "book");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyPageAndPaneIsDrawn(boolean dark) throws IOException {
        String look = dark ? "dark" : "light";
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> Theme.apply(dark));
            for (int i = 0; i < JobPage.values().length; i++) {
                int index = i;
                GuiActionRunner.execute(() -> {
                    screen.job().go(JobPage.values()[index]);
                    screen.job().show(SidePane.values()[index % PANES.size()]);
                });
                screen.arrive();
                screen.settle();
                assertThat(colors(screen.picture(look + "-" + (i + 1) + "-" + JobPage.values()[i].word())))
                        .isGreaterThan(20);
            }
        }
    }

    @Test
    void firstPageIsDrawn() {
        try (OnScreen screen = new OnScreen()) {
            screen.open(() -> screen.forms().first());
            assertThat(colors(screen.picture("light-0-first"))).isGreaterThan(20);
            GuiActionRunner.execute(() -> Theme.apply(true));
            assertThat(colors(screen.picture("dark-0-first"))).isGreaterThan(20);
        }
    }

    /** A blank picture has one color. */
    private static int colors(BufferedImage image) {
        Set<Integer> seen = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                seen.add(image.getRGB(x, y));
            }
        }
        return seen.size();
    }
}
