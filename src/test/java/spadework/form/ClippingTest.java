// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenu;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.form.kit.Theme;
import spadework.form.page.JobPage;

/** Labels and buttons have the room that their words take, at each size of window and of letters. */
@WindowTest
class ClippingTest {
    /** Ends in dots by design, with all of it in the findings. */
    private static final Set<String> CUT_ON_PURPOSE = Set.of("gravest", "cell");

    @TempDir
    Path folder;

    @AfterEach
    void usualSize() {
        GuiActionRunner.execute(() -> Theme.size(1, false));
    }

    @ParameterizedTest
    @CsvSource({
        "1024, 700, 1.0", "1024, 700, 1.25", "1024, 700, 1.5", "1024, 700, 2.0",
        "1366, 768, 1.0", "1366, 768, 1.25", "1366, 768, 1.5", "1366, 768, 2.0",
        "1920, 1080, 1.0", "1920, 1080, 1.25", "1920, 1080, 1.5", "1920, 1080, 2.0"
    })
    void nothingIsClipped(int wide, int high, float scale) throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> {
                Theme.size(scale, false);
                screen.job().setSize(wide, high);
                screen.job().validate();
            });
            screen.settle();
            Set<String> clipped = new TreeSet<>();
            for (JobPage page : JobPage.values()) {
                GuiActionRunner.execute(() -> screen.job().go(page));
                screen.settle();
                screen.all(JComponent.class, ClippingTest::hasWords).forEach(one -> {
                    boolean cut = screen.ask(() -> one.getPreferredSize().width > one.getWidth() + 1
                            || one.getPreferredSize().height > one.getHeight() + 1);
                    if (cut) {
                        clipped.add(screen.ask(() -> page.word() + ": " + words(one) + " takes "
                                + one.getPreferredSize().width + " × " + one.getPreferredSize().height + ", has "
                                + one.getWidth() + " × " + one.getHeight()));
                    }
                });
                if (page == JobPage.START || page == JobPage.WALLS || page == JobPage.PRICE) {
                    screen.picture("size-" + wide + "-" + Math.round(scale * 100) + "-" + page.word());
                }
            }
            assertThat(clipped).as(wide + " × " + high + " at " + scale).isEmpty();
        }
    }

    private static boolean hasWords(JComponent one) {
        boolean words = one instanceof JLabel || (one instanceof AbstractButton && !(one instanceof JMenu));
        boolean beside = one.getParent() != null
                && one.getParent().getClass().getName().matches(".*(CellRendererPane|JComboBox|ScrollBar).*");
        return words
                && one.isShowing()
                && one.getWidth() > 0
                && !words(one).isEmpty()
                && !beside
                && !CUT_ON_PURPOSE.contains(String.valueOf(one.getName()));
    }

    private static String words(JComponent one) {
        String words = one instanceof JLabel label ? label.getText() : ((AbstractButton) one).getText();
        return words == null ? "" : words.strip();
    }
}
