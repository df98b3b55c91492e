// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.page.FormPage;
import spadework.form.page.JobPage;
import spadework.form.page.JobStop;
import spadework.form.view.ScenePanel;

/** The keys of the menu reach every page and undo, redo, save and look up. */
@WindowTest
class ShortcutsTest {
    private static final int[] STOP_KEYS = {
        KeyEvent.VK_1, KeyEvent.VK_2, KeyEvent.VK_3, KeyEvent.VK_4, KeyEvent.VK_5,
    };

    @TempDir
    Path folder;

    /** Keys are handed over in the screen's own time. */
    private static void until(OnScreen screen, BooleanSupplier seen) {
        screen.waitFor(() -> screen.ask(seen::getAsBoolean));
    }

    @Test
    void altAndANumberGoesToTheStopOfThatNumberAndToThePageWhereItWasLeft() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            GuiActionRunner.execute(() -> screen.job().go(JobPage.TERMS));
            assertThat(STOP_KEYS).hasSameSizeAs(JobStop.values());
            for (int stop = STOP_KEYS.length - 1; stop >= 0; stop--) {
                hand.altKey(STOP_KEYS[stop]);
                JobPage page = stop == JobStop.PRICE.ordinal()
                        ? JobPage.TERMS
                        : JobStop.values()[stop].pages().get(0);
                FormPage wanted = screen.job().pages().get(page.ordinal());
                screen.waitFor(() -> screen.ask(wanted::isShowing));
            }
        }
    }

    @Test
    void controlEnterGoesToTheNextStopAndTheKeyboardWithIt() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            for (JobStop stop : List.of(JobStop.PRICE, JobStop.PAPERS, JobStop.AGREEMENT, JobStop.FINISH)) {
                hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
                FormPage wanted = screen.job().pages().get(stop.pages().get(0).ordinal());
                screen.waitFor(() -> screen.ask(wanted::isShowing));
            }
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
            screen.settle();
            assertThat(screen.ask(() ->
                            screen.job().pages().get(JobPage.BUILT.ordinal()).isShowing()))
                    .as("the last stop has none behind it")
                    .isTrue();
        }
    }

    @Test
    void controlZAndYUndoAndRedoAndSSaves() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        try (OnScreen screen = OnScreen.job(file)) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            GuiActionRunner.execute(() -> screen.job().go(JobPage.PEOPLE));
            JTextField title = screen.all(JTextField.class, field -> "/title".equals(field.getName()))
                    .get(0);
            hand.replace(title, "Front wall");
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
            until(screen, () -> screen.session().draft().shown("/title").equals("Back and side basement walls"));
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
            until(screen, () -> screen.session().draft().shown("/title").equals("Front wall"));
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_Z);
            until(screen, () -> screen.session().draft().shown("/title").equals("Front wall"));
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
            until(screen, () -> screen.session().history().isSaved());
            screen.settle();
        }
        assertThat(Files.readString(file)).contains("\"Front wall\"");
    }

    @Test
    void controlLWaitsForWordsOfThePriceBook() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_L);
            until(
                    screen,
                    () -> screen.all(JTextField.class, JTextField::isFocusOwner).stream()
                            .anyMatch(field -> field.getAccessibleContext()
                                    .getAccessibleName()
                                    .equals("Search items")));
        }
    }

    @Test
    void eachWallAndEachRunCanBeDrawn() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("poured-basement-with-sump", folder))) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_2);
            until(
                    screen,
                    () -> screen.job().isIdle()
                            && screen.all(ScenePanel.class, ScenePanel::isShowing)
                                            .size()
                                    == 3);
            for (String name : new String[] {"walls", "runs"}) {
                JComboBox<?> box = screen.all(JComboBox.class, one -> ("drawing " + name).equals(one.getName()))
                        .get(0);
                String picture = name.equals("walls") ? "section" : "profile";
                ScenePanel drawn = screen.all(ScenePanel.class, one -> picture.equals(one.getName()))
                        .get(0);
                String first = screen.ask(() -> drawn.getAccessibleContext().getAccessibleDescription());
                assertThat(screen.ask(box::getItemCount)).as(name).isGreaterThan(1);
                screen.focus(box);
                hand.key(KeyEvent.VK_DOWN);
                until(
                        screen,
                        () -> !drawn.getAccessibleContext()
                                .getAccessibleDescription()
                                .equals(first));
                if (screen.ask(box::isPopupVisible)) {
                    hand.key(KeyEvent.VK_ENTER);
                }
            }
            screen.picture("drawing-chosen");
        }
    }
}
