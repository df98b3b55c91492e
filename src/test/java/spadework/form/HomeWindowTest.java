// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Frame;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.office.files.JobsFolder;
import spadework.office.files.JobsHome;

/** The first page of somebody who has jobs. */
@WindowTest
class HomeWindowTest {
    @TempDir
    Path folder;

    @Test
    void jobsAreFoundByWordsAndOpenedByEnter() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        Path jobs = file.getParent().getParent();
        JobsFolder.open(jobs, Files.readString(Path.of("sample-quotes", "company.json")));
        try (OnScreen screen = new OnScreen()) {
            screen.remembered().keep(jobs);
            screen.open(() -> screen.forms().home());
            screen.settle();
            screen.picture("home");
            JTable rows = screen.all(JTable.class, t -> "home.jobs".equals(t.getName()))
                    .get(0);
            assertThat(screen.ask(rows::getRowCount)).isEqualTo(1);
            FormRobot hand = new FormRobot(screen, Draft.empty());
            JTextField words = screen.all(JTextField.class, field -> "home words".equals(field.getName()))
                    .get(0);
            screen.waitFor("keyboard in the words", () -> screen.ask(words::isFocusOwner));
            hand.type("nobody");
            screen.settle();
            assertThat(screen.ask(rows::getRowCount)).isZero();
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
            hand.type("wrenf");
            screen.settle();
            assertThat(screen.ask(rows::getRowCount)).isEqualTo(1);
            assertThat(screen.ask(() -> rows.getValueAt(0, 2).toString())).isEqualTo("not sent yet");
            assertThat(screen.ask(() -> rows.getValueAt(0, 3).toString())).isEqualTo("send the proposal");
            hand.key(KeyEvent.VK_ENTER);
            screen.waitFor(
                    "the job",
                    () -> screen.ask(() ->
                            Stream.of(Frame.getFrames()).anyMatch(one -> one instanceof JobWindow && one.isShowing())));
            JFrame home = (JFrame) screen.window().target();
            screen.waitFor("the list to go", () -> screen.ask(() -> !home.isShowing()));
        }
    }

    @Test
    void jobsWithoutAPriceStandThereTooAndAreFoundByWords() throws IOException {
        Path priced = SampleCopies.of("block-basement-to-swale", folder);
        Path jobs = priced.getParent().getParent();
        JobsFolder.open(jobs, Files.readString(Path.of("sample-quotes", "company.json")));
        Draft sample = Draft.read(Files.readString(priced)).orElseThrow();
        Path half = Files.createDirectories(jobs.resolve("half")).resolve("job.json");
        Files.writeString(
                half,
                sample.typed("/number", "2026-077")
                        .typed("/customer/names/0", "Orla Fenwick")
                        .typed("/walls/0/length", "")
                        .text());
        Files.writeString(Files.createDirectories(jobs.resolve("damaged")).resolve("job.json"), "{ not a job");
        try (OnScreen screen = new OnScreen()) {
            screen.remembered().keep(jobs);
            screen.open(() -> screen.forms().home());
            screen.settle();
            screen.picture("home-unfinished");
            assertThat(standing(screen))
                    .containsExactlyInAnyOrder("not sent yet", "to be filled in", "its file cannot be read");
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.type("fenwick");
            screen.settle();
            assertThat(standing(screen)).containsExactly("to be filled in");
            hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
            hand.type("damaged");
            screen.settle();
            assertThat(standing(screen)).containsExactly("its file cannot be read");
            JFrame home = (JFrame) screen.window().target();
            screen.ask(() -> {
                home.dispose();
                return home;
            });
        }
    }

    private static List<String> standing(OnScreen screen) {
        JTable rows = screen.all(JTable.class, table -> "home.jobs".equals(table.getName()))
                .get(0);
        return screen.ask(() -> IntStream.range(0, rows.getRowCount())
                .mapToObj(row -> rows.getValueAt(row, 2).toString())
                .toList());
    }

    @Test
    void jobsOfAFolderThatAnOfficeFileNamesAreListed() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        try (OnScreen screen = OnScreen.of(JobsHome.in(file.getParent().getParent()))) {
            screen.open(() -> screen.forms().home());
            screen.settle();
            JTable rows = screen.all(JTable.class, table -> "home.jobs".equals(table.getName()))
                    .get(0);
            assertThat(screen.ask(rows::getRowCount)).isEqualTo(1);
            JFrame home = (JFrame) screen.window().target();
            screen.ask(() -> {
                home.dispose();
                return home;
            });
        }
    }
}
