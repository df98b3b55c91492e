// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.form.kit.Theme;
import spadework.form.library.LibraryTab;
import spadework.samples.GeneratedJobsFolder;

/** Every tab of the library, light and dark, is kept in target/screens; all that takes the keyboard says what it is. */
@WindowTest
class LibraryScreensTest {
    private static final List<String> TABS = List.of("book", "workbook", "bids", "feedback", "whatif");

    @TempDir
    Path root;

    private LibraryRobot open(OnScreen screen) throws IOException {
        Path tree = root.resolve("jobs");
        GeneratedJobsFolder.make(tree, 14);
        screen.remembered().folder = Optional.of(tree);
        screen.open(() -> screen.forms().openJob(tree.resolve("000/J-00000/job.json")));
        screen.settle();
        return LibraryRobot.open(screen, LibraryTab.BOOK);
    }

    private static void tab(OnScreen screen, LibraryRobot hand, String name, int index) {
        JTabbedPane tabs = hand.find(JTabbedPane.class, name);
        GuiActionRunner.execute(() -> tabs.setSelectedIndex(index));
        screen.arrive();
        screen.settle();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyTabIsDrawnAndFitsASmallScreen(boolean dark) throws IOException {
        String look = dark ? "dark" : "light";
        try (OnScreen screen = new OnScreen()) {
            LibraryRobot hand = open(screen);
            GuiActionRunner.execute(() -> Theme.apply(dark));
            for (int i = 0; i < TABS.size(); i++) {
                tab(screen, hand, "library.tabs", i);
                if (i == 0) {
                    hand.type("library.find", "STONE-MACH");
                    hand.value("Material: a package", "$43.00");
                    hand.type("library.reason", "the quarry's August list");
                    hand.press("library.show");
                }
                if (i == 4) {
                    hand.type("whatif.with.1", "margin=20%");
                    hand.type("whatif.with.2", "soil=C,production=85%");
                    hand.press("whatif.compare");
                    hand.press("whatif.range");
                }
                screen.picture(look + "-library-" + TABS.get(i));
                assertThat(screen.ask(() -> screen.window().target().getSize().width))
                        .isLessThanOrEqualTo(1366);
                assertThat(screen.all(AbstractButton.class, Component::isShowing))
                        .isNotEmpty()
                        .allSatisfy(button -> assertThat(isWholeInView(screen, button))
                                .as(button.getName())
                                .isTrue());
            }
        }
    }

    private static boolean isWholeInView(OnScreen screen, JComponent control) {
        return screen.ask(() -> {
            Rectangle seen = control.getVisibleRect();
            return seen.width == control.getWidth() && seen.height == control.getHeight();
        });
    }

    @Test
    void everyControlOfTheLibraryHasAName() throws IOException {
        try (OnScreen screen = new OnScreen()) {
            LibraryRobot hand = open(screen);
            Set<String> nameless = new TreeSet<>();
            int seen = 0;
            for (int i = 0; i < TABS.size(); i++) {
                tab(screen, hand, "library.tabs", i);
                for (int inner = 0; inner < (i == 0 ? 3 : i == 2 ? 2 : 1); inner++) {
                    if (i == 0 || i == 2) {
                        tab(screen, hand, i == 0 ? "library.about" : "bids.below", inner);
                    }
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
            assertThat(seen).isGreaterThan(60);
            assertThat(nameless).isEmpty();
        }
    }
}
