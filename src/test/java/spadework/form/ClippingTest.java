// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.form.kit.Theme;
import spadework.form.page.FormPage;
import spadework.form.page.JobPage;

/** Labels and buttons have the room that their words take, at each size of window and of letters. */
@WindowTest
class ClippingTest {
    /** Ends in dots by design, with all of it in the findings. */
    private static final Set<String> CUT_ON_PURPOSE = Set.of("gravest", "cell");

    private static final Set<JobPage> PICTURED = EnumSet.of(JobPage.START, JobPage.WALLS, JobPage.PRICE);
    private static final float[] SCALES = {1, 1.25f, 1.5f, 2};
    private static final List<Dimension> SIZES =
            List.of(new Dimension(1024, 700), new Dimension(1366, 768), new Dimension(1920, 1080));

    /** Parts of the line below every page. */
    private static final Set<String> SUMMED = Set.of("total", "change", "gravest", "saved");

    @TempDir
    Path folder;

    @AfterEach
    void usualSize() {
        GuiActionRunner.execute(() -> Theme.size(1, false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void nothingIsClipped(String language) throws IOException {
        Set<String> clipped = new TreeSet<>();
        Path job = SampleCopies.of("block-basement-to-swale", folder);
        SampleCopies.readIn(language, folder);
        try (OnScreen screen = OnScreen.job(job)) {
            for (float scale : SCALES) {
                GuiActionRunner.execute(() -> Theme.size(scale, false));
                for (Dimension size : SIZES) {
                    GuiActionRunner.execute(() -> {
                        screen.job().setSize(size);
                        screen.job().validate();
                    });
                    String at = size.width + " × " + size.height + " at " + scale + ", ";
                    for (JobPage page : JobPage.values()) {
                        GuiActionRunner.execute(() -> {
                            screen.job().go(page);
                            screen.job().openAllGroups();
                        });
                        screen.settle();
                        clipped.addAll(clipped(screen, at + page.word()));
                        if (PICTURED.contains(page)) {
                            screen.picture("size-" + language + "-" + size.width + "-" + Math.round(scale * 100) + "-"
                                    + page.word());
                        }
                    }
                }
            }
        }
        assertThat(clipped).isEmpty();
    }

    private static List<String> clipped(OnScreen screen, String where) {
        return screen.ask(() ->
                Stream.concat(cut(screen, where), overhanging(screen, where)).toList());
    }

    private static Stream<String> overhanging(OnScreen screen, String where) {
        return OnScreen.inside(screen.job(), JComponent.class, ClippingTest::overhangs).stream()
                .map(one -> where + ": " + one.getName() + " goes beyond the page");
    }

    /** Whether a control ends to the right of its page, or of the line below; what scrolls in a pane of its own may. */
    private static boolean overhangs(JComponent one) {
        if (SUMMED.contains(String.valueOf(one.getName()))) {
            return one.isShowing()
                    && one.getX() + one.getWidth() > one.getParent().getWidth();
        }
        FormPage page = (FormPage) SwingUtilities.getAncestorOfClass(FormPage.class, one);
        return page != null
                && one.isShowing()
                && !page.isAncestorOf(SwingUtilities.getAncestorOfClass(JScrollPane.class, one))
                && SwingUtilities.convertPoint(one, one.getWidth(), 0, page).x > page.getWidth();
    }

    private static Stream<String> cut(OnScreen screen, String where) {
        return OnScreen.inside(screen.job(), JComponent.class, ClippingTest::hasWords).stream()
                .filter(one -> one.getPreferredSize().width > one.getWidth() + 1
                        || one.getPreferredSize().height > one.getHeight() + 1)
                .map(one -> where + ": " + words(one) + " takes " + one.getPreferredSize().width + " × "
                        + one.getPreferredSize().height + ", has " + one.getWidth() + " × " + one.getHeight());
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
