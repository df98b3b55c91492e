// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Frame;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
