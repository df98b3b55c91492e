// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.FormRobot;
import spadework.form.OnScreen;
import spadework.form.SampleCopies;
import spadework.form.SetupWindow;
import spadework.form.WindowTest;

/** The file is saved whole, never over what somebody else wrote, and what was not saved is offered again. */
@WindowTest
class JobSavingTest {
    @TempDir
    Path folder;

    private static void title(OnScreen screen, String words) {
        GuiActionRunner.execute(
                () -> screen.session().edit(screen.session().draft().typed("/title", words)));
        screen.settle();
    }

    private static void answer(OnScreen screen, String key) {
        String asked = notice(screen);
        new FormRobot(screen, Draft.empty()).press(screen.job(), key);
        // A real screen hands the click over in its own time.
        screen.waitFor(() -> !notice(screen).equals(asked));
        screen.settle();
    }

    private static String notice(OnScreen screen) {
        return screen.ask(() -> screen.job().notice().said());
    }

    @Test
    void whatWasNotSavedIsKeptAsideAndTakenUpAgain() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        String before = Files.readString(file);
        Path aside = file.resolveSibling(".job.json.unsaved");
        try (OnScreen screen = OnScreen.job(file)) {
            title(screen, "Front wall");
            assertThat(aside).content().contains("\"Front wall\"");
        }
        assertThat(file).content().isEqualTo(before);
        try (OnScreen screen = OnScreen.job(file)) {
            assertThat(notice(screen)).startsWith("The program ended before");
            screen.picture("recovery");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Back and side basement walls");
            answer(screen, "recover.take");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Front wall");
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(screen.session().history().isSaved()).isTrue();
        }
        assertThat(file).content().contains("\"Front wall\"");
        assertThat(aside).doesNotExist();
    }

    @Test
    void whatWasKeptAsideCanBeThrownAway() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        Path aside = file.resolveSibling(".job.json.unsaved");
        try (OnScreen screen = OnScreen.job(file)) {
            title(screen, "Front wall");
        }
        try (OnScreen screen = OnScreen.job(file)) {
            answer(screen, "recover.leave");
            assertThat(aside).doesNotExist();
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Back and side basement walls");
        }
    }

    @Test
    void fileChangedFromElsewhereIsNotWrittenOver() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        try (OnScreen screen = OnScreen.job(file)) {
            title(screen, "Mine");
            Files.writeString(file, Files.readString(file).replace("Back and side", "Theirs:"));
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(notice(screen))
                    .isEqualTo(
                            "You and somebody else changed the same: title was Back and side basement walls, you made"
                                    + " it Mine, they Theirs: basement walls. Nothing was overwritten.");
            assertThat(file).content().contains("Theirs:").doesNotContain("Mine");
            assertThat(screen.session().history().isSaved()).isFalse();
            answer(screen, "changed.take");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Theirs: basement walls");
            assertThat(screen.session().history().isSaved()).isTrue();
            GuiActionRunner.execute(() -> screen.session().undo());
            assertThat(screen.session().draft().shown("/title"))
                    .as("mine is not lost")
                    .isEqualTo("Mine");
        }
    }

    @Test
    void whatOnlyOneSideChangedIsPutTogetherAndSaved() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        try (OnScreen screen = OnScreen.job(file)) {
            title(screen, "Mine");
            Files.writeString(file, Files.readString(file).replace("\"42 ft\"", "\"44 ft\""));
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(notice(screen))
                    .startsWith("Somebody else changed this job: ")
                    .contains("44 ft", "undo takes it out again");
            assertThat(screen.session().history().isSaved()).isTrue();
            assertThat(file).content().contains("\"44 ft\"", "\"Mine\"");
        }
    }

    @Test
    void fileThatNobodyCanReadAnyMoreIsOverwrittenOnlyWhenToldSo() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        try (OnScreen screen = OnScreen.job(file)) {
            title(screen, "Mine");
            Files.writeString(file, "{ half");
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(notice(screen)).startsWith("Somebody else changed ").endsWith("Nothing was overwritten.");
            assertThat(file).content().isEqualTo("{ half");
            answer(screen, "changed.take");
            assertThat(notice(screen)).contains("can no longer be read as a job");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Mine");
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            answer(screen, "changed.keep");
            assertThat(file).content().contains("\"Mine\"");
            assertThat(screen.session().history().isSaved()).isTrue();
        }
    }

    @Test
    void mineIsKeptOverTheirsOnlyWhenToldSo() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        try (OnScreen screen = OnScreen.job(file)) {
            title(screen, "Mine");
            Files.writeString(file, Files.readString(file).replace("Back and side", "Theirs:"));
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            answer(screen, "changed.keep");
            assertThat(screen.session().history().isSaved()).isTrue();
            assertThat(file).content().contains("Mine").doesNotContain("Theirs:");
        }
    }

    @Test
    void newJobGetsTheFolderOfItsNumberAndNeverAnothers() throws IOException {
        Path other = SampleCopies.of("block-basement-to-swale", folder);
        Files.move(other.getParent(), folder.resolve("2026-014"));
        try (OnScreen screen = new OnScreen()) {
            screen.remembered().keep(folder);
            screen.open(() -> screen.forms().newJob());
            screen.settle();
            assertThat(screen.session().draft().shown("/issued")).isEqualTo("2026-08-10");
            assertThat(screen.session().draft().shown("/number"))
                    .as("a number that no job of the folder has")
                    .isEqualTo("2026-015");
            GuiActionRunner.execute(
                    () -> screen.session().edit(screen.session().draft().typed("/number", "")));
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(notice(screen)).startsWith("Give the job a number first");
            GuiActionRunner.execute(
                    () -> screen.session().edit(screen.session().draft().typed("/number", "2026-014")));
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(notice(screen)).startsWith("There is a job already");
            GuiActionRunner.execute(
                    () -> screen.session().edit(screen.session().draft().typed("/number", "2026-015")));
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(screen.session().file().path())
                    .isEqualTo(folder.resolve("2026-015").resolve("job.json"));
            assertThat(folder.resolve("2026-015").resolve("job.json")).exists();
        }
    }

    @Test
    void fileThatCannotBeKeptWholeIsNotOpened() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        Files.writeString(file, "{ \"number\": \"1\", \"number\": \"2\" }");
        try (OnScreen screen = new OnScreen()) {
            screen.open(() -> screen.forms().openJob(file));
            SetupWindow page = (SetupWindow) screen.window().target();
            assertThat(screen.ask(() -> page.notice().said())).contains("the key \"number\" a second time");
        }
    }

    @Test
    void whatCannotBeKeptOnLeavingIsToldBeforeTheWindowGoes() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        Path inTheWay = Files.createDirectories(file.resolveSibling(".job.json.unsaved/full"));
        try (OnScreen screen = OnScreen.job(file)) {
            SetupWindow page = (SetupWindow) screen.window().target();
            assertThat(screen.ask(() -> page.notice().said())).startsWith("A file or folder cannot be used");
        }
        Files.delete(inTheWay);
        Files.delete(inTheWay.getParent());
        try (OnScreen screen = OnScreen.job(file)) {
            Files.createDirectories(inTheWay);
            title(screen, "Mine");
            assertThat(notice(screen)).as("an edit").startsWith("A file or folder cannot be used");
            GuiActionRunner.execute(() -> screen.job().leave());
            screen.settle();
            assertThat(screen.ask(() -> screen.job().isShowing())).isTrue();
            assertThat(notice(screen)).as("leaving").startsWith("A file or folder cannot be used");
            answer(screen, "leave.unsaved");
            assertThat(screen.ask(() -> screen.job().isDisplayable())).isFalse();
        }
    }
}
