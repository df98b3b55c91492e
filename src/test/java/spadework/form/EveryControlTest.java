// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JComponent;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.FileSchema;
import spadework.form.page.JobPage;

/** Every control says what it is, and every key of the format has one. */
@WindowTest
class EveryControlTest {
    /** Names the format, and means nothing to a person. */
    /** What the file says of itself. */
    private static final Set<String> OF_THE_FILE = Set.of("/$schema", "/format");

    @TempDir
    Path folder;

    @Test
    void everyControlThatTakesTheKeyboardHasAName() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            Set<String> nameless = new TreeSet<>();
            int seen = 0;
            for (int page = 0; page < screen.job().pages().size(); page++) {
                int shown = page;
                GuiActionRunner.execute(() -> screen.job().go(JobPage.values()[shown]));
                for (int pane = 0; pane < 5; pane++) {
                    int beside = pane;
                    GuiActionRunner.execute(() -> screen.job().show(SidePane.values()[beside]));
                    screen.settle();
                    List<JComponent> controls = screen.all(JComponent.class, EveryControlTest::takesTheKeyboard);
                    seen += controls.size();
                    for (JComponent control : controls) {
                        String name =
                                screen.ask(() -> control.getAccessibleContext().getAccessibleName());
                        if (name == null || name.isBlank()) {
                            nameless.add(control.getClass().getSimpleName() + " " + control.getName());
                        }
                    }
                }
            }
            assertThat(seen).isGreaterThan(300);
            assertThat(nameless).isEmpty();
        }
    }

    static boolean takesTheKeyboard(JComponent component) {
        boolean frame =
                component instanceof JScrollPane || component instanceof JViewport || component instanceof JScrollBar;
        return component.isShowing()
                && component.isFocusable()
                && component.isEnabled()
                && !frame
                && component
                        .getClass()
                        .getName()
                        .matches("javax.swing.J(Button|TextField|TextArea|ComboBox|Table|Tree|List|CheckBox|RadioButton"
                                + "|TabbedPane|SplitPane|ToggleButton)"
                                + "|spadework.form.*(PageButton|EditableTable|Picture)");
    }

    @Test
    void everyKeyOfTheFormatHasItsControl() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            List<String> homeless = new ArrayList<>();
            for (String place : FileSchema.job().places()) {
                if (!OF_THE_FILE.contains(place)
                        && screen.ask(() -> screen.job().pages().stream().noneMatch(page -> page.holds(place)))) {
                    homeless.add(place);
                }
            }
            assertThat(homeless).isEmpty();
        }
    }

    @Test
    void tabWalksThroughAPageAndComesBack() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            screen.robot().click(screen.job().pages().get(0).entries().get(0).control());
            Set<Component> visited = new HashSet<>();
            for (int i = 0; i < 12; i++) {
                visited.add(screen.ask(() ->
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()));
                screen.robot().pressAndReleaseKey(KeyEvent.VK_TAB);
                screen.settle();
            }
            assertThat(visited).hasSizeGreaterThan(4).doesNotContainNull();
        }
    }
}
