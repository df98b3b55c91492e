// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.form.kit.Messages;
import spadework.form.library.LibraryTab;
import spadework.form.page.JobPage;
import spadework.wording.Language;

/** The window of a company whose office reads Spanish: on every page and pane no word of the English bundle is left. */
@WindowTest
class SpanishWindowTest {
    private static final Path WORDS = Path.of("src/main/resources/spadework/form");

    @TempDir
    Path folder;

    @AfterEach
    void english() {
        Messages.speak(Language.ENGLISH);
    }

    @Test
    void everyPageAndPaneSpeaksSpanish() throws IOException {
        Path job = SampleCopies.of("block-basement-to-swale", folder);
        SampleCopies.readIn("es", folder);
        Set<String> english = englishOnly();
        Set<String> left = new TreeSet<>();
        int seen = 0;
        try (OnScreen screen = OnScreen.job(job)) {
            for (JobPage page : JobPage.values()) {
                SidePane pane = SidePane.values()[page.ordinal() % SidePane.values().length];
                GuiActionRunner.execute(() -> {
                    screen.job().go(page);
                    screen.job().openAllGroups();
                    screen.job().show(pane);
                });
                screen.settle();
                screen.picture("es-" + (page.ordinal() + 1) + "-" + page.word());
                List<String> said = screen.ask(() -> said(screen));
                seen += said.size();
                said.stream()
                        .filter(english::contains)
                        .map(word -> page.word() + ": " + word)
                        .forEach(left::add);
            }
        }
        assertThat(seen).isGreaterThan(1500);
        assertThat(left).isEmpty();
    }

    @Test
    void libraryAndMenusSpeakSpanish() throws IOException {
        Path job = SampleCopies.of("block-basement-to-swale", folder);
        SampleCopies.readIn("es", folder);
        Set<String> english = englishOnly();
        Set<String> left = new TreeSet<>();
        try (OnScreen screen = OnScreen.job(job)) {
            GuiActionRunner.execute(() -> {
                assertThat(screen.job().getJMenuBar().getMenu(0).getText()).isEqualTo("Trabajo");
                Stream.of(screen.job().getJMenuBar().getComponents())
                        .flatMap(menu -> Stream.of(((javax.swing.JMenu) menu).getMenuComponents()))
                        .filter(JMenuItem.class::isInstance)
                        .map(item -> ((JMenuItem) item).getText())
                        .filter(english::contains)
                        .forEach(left::add);
            });
            for (LibraryTab tab : LibraryTab.values()) {
                List<String> said = screen.ask(() -> {
                    var library = screen.job().library(tab);
                    return OnScreen.inside(library, JComponent.class, one -> true).stream()
                            .flatMap(SpanishWindowTest::words)
                            .toList();
                });
                assertThat(said).isNotEmpty();
                said.stream()
                        .filter(english::contains)
                        .map(word -> tab + ": " + word)
                        .forEach(left::add);
            }
        }
        assertThat(left).isEmpty();
    }

    /** The list of jobs is in the language of the firm; a job of another firm, opened from it, in that one's. */
    @Test
    void homeSpeaksTheLanguageOfTheFirmWhoseJobsItLists() throws IOException {
        Path job = SampleCopies.of("block-basement-to-swale", folder);
        SampleCopies.readIn("es", folder);
        Path elsewhere = SampleCopies.of("block-basement-to-swale", Files.createDirectories(folder.resolve("other")));
        SampleCopies.readIn("en", folder.resolve("other"));
        try (OnScreen screen = new OnScreen()) {
            screen.remembered().keep(job.getParent().getParent());
            screen.open(() -> screen.forms().home());
            screen.settle();
            screen.picture("es-home");
            assertThat(screen.ask(() -> screen.window().target().getTitle())).startsWith("Sus trabajos");
            screen.open(() -> screen.forms().openJob(elsewhere));
            screen.settle();
            assertThat(screen.ask(() -> screen.job().getJMenuBar().getMenu(0).getText()))
                    .isEqualTo("Job");
        }
    }

    private static List<String> said(OnScreen screen) {
        return OnScreen.inside(screen.job(), JComponent.class, JComponent::isShowing).stream()
                .flatMap(SpanishWindowTest::words)
                .toList();
    }

    /** What a control says, shows in its lists and heads, and tells of itself. */
    private static Stream<String> words(JComponent one) {
        Stream<String> said = one instanceof JLabel label
                ? Stream.of(String.valueOf(label.getText()))
                : one instanceof AbstractButton button ? Stream.of(String.valueOf(button.getText())) : Stream.empty();
        Stream<String> listed = one instanceof JComboBox<?> box
                ? Stream.iterate(0, i -> i < box.getItemCount(), i -> i + 1).map(i -> String.valueOf(box.getItemAt(i)))
                : Stream.empty();
        Stream<String> headed = one instanceof JTable table
                ? Stream.iterate(0, i -> i < table.getColumnCount(), i -> i + 1).map(table::getColumnName)
                : Stream.empty();
        Stream<String> told = Stream.of(
                String.valueOf(one.getToolTipText()),
                String.valueOf(
                        one.getAccessibleContext() == null
                                ? ""
                                : one.getAccessibleContext().getAccessibleName()));
        return Stream.of(said, listed, headed, told).flatMap(words -> words).filter(word -> !word.isBlank());
    }

    /** What the English bundle says and the Spanish one does not. */
    private static Set<String> englishOnly() throws IOException {
        Set<String> words = texts("words.properties");
        words.removeAll(texts("words_es.properties"));
        words.removeIf(word -> word.contains("{") || word.length() < 2);
        return words;
    }

    private static Set<String> texts(String file) throws IOException {
        Properties read = new Properties();
        try (Reader reader = Files.newBufferedReader(WORDS.resolve(file))) {
            read.load(reader);
        }
        Set<String> texts = new HashSet<>();
        read.stringPropertyNames().forEach(key -> texts.add(read.getProperty(key)));
        return texts;
    }
}
