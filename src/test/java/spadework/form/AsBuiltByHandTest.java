// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.page.JobPage;

/** What was built starts as what was agreed, by one key; only what turned out different is typed. */
@WindowTest
class AsBuiltByHandTest {
    @TempDir
    Path folder;

    @Test
    void builtStartsAsAgreedAndOnlyDifferencesAreTyped() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> screen.job().go(JobPage.BUILT));
            screen.settle();
            Draft before = screen.session().draft();
            assertThat(before.rows("/asBuilt/walls")).isZero();
            JButton begin = screen.all(JButton.class, one -> "built begin".equals(one.getName()))
                    .get(0);
            FormRobot hand = new FormRobot(screen, Draft.empty());
            screen.focus(begin);
            hand.key(KeyEvent.VK_SPACE);
            screen.settle();
            screen.picture("built-as-agreed");
            for (int wall = 0; wall < 2; wall++) {
                for (List<String> same : List.of(
                        List.of("/label", "/label"),
                        List.of("/length", "/length"),
                        List.of("/depthStart", "/depth/start"),
                        List.of("/depthEnd", "/depth/end"))) {
                    assertThat(built(screen, wall, same.get(0)))
                            .as("wall " + wall + same.get(0))
                            .isNotEmpty()
                            .isEqualTo(before.shown("/walls/" + wall + same.get(1)));
                }
            }
            assertThat(screen.session().draft().rows("/asBuilt/pipes")).isEqualTo(3);
            hand.cell(screen.job().page(JobPage.BUILT), "/asBuilt/walls", 1, "/length", "27 ft");
            screen.settle();
            assertThat(built(screen, 0, "/length")).isEqualTo("42 ft");
            assertThat(built(screen, 1, "/length")).isEqualTo("27 ft");
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
            screen.waitFor("nothing built", () -> screen.session().draft().rows("/asBuilt/walls") == 0);
        }
    }

    private static String built(OnScreen screen, int wall, String key) {
        return screen.session().draft().shown("/asBuilt/walls/" + wall + key);
    }
}
