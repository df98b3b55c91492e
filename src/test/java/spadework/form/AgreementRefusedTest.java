// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.page.JobPage;
import spadework.office.Office;
import spadework.office.SampleJobFolder;
import spadework.office.agreement.Issuing;
import spadework.office.reply.TemplateFolder;

/** A step that cannot be taken says why in the words of the office, and nothing is written. */
@WindowTest
class AgreementRefusedTest {

    @TempDir
    Path folder;

    private OnScreen screen;

    private void open(Path file) {
        screen = OnScreen.job(file, SampleJobFolder.TODAY);
        GuiActionRunner.execute(() -> screen.job().go(JobPage.AGREEMENT));
        screen.settle();
    }

    private void press(String button, String outcome) {
        new FormRobot(screen, Draft.empty()).press(screen.job(), button);
        screen.waitFor(() -> said(outcome).matches("(?s)(Done|Nothing).*"));
        screen.settle();
    }

    private String said(String name) {
        List<JTextArea> areas = screen.all(JTextArea.class, area -> name.equals(area.getName()) && area.isShowing());
        return areas.isEmpty() ? "" : screen.ask(areas.get(0)::getText);
    }

    @Test
    void openStopsKeepAProposalFromBeingIssuedAndAreToldInTheirOwnWords() throws IOException {
        Path file = SampleCopies.of("refused-type-a-and-no-fall", folder);
        open(file);
        try (OnScreen shown = screen) {
            press("step issue", "outcome issue");
            List<String> stops = screen.ask(() -> screen.session().bid().orElseThrow().openStops().stream()
                    .map(screen.session().office()::described)
                    .toList());
            assertThat(stops).hasSizeGreaterThan(3);
            assertThat(said("outcome issue"))
                    .startsWith("Nothing was changed. Fix each stop")
                    .contains(stops);
            screen.picture("issue-stopped");
        }
        assertThat(file.resolveSibling("register.jsonl")).doesNotExist();
    }

    @Test
    void yesWithoutNameAndSignatureIsRefusedInTheWordsOfTheOffice() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(file);
        String before = Files.readString(file);
        open(file);
        try (OnScreen shown = screen) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            JTextField on = screen.all(JTextField.class, field -> "accept on".equals(field.getName()))
                    .get(0);
            hand.replace(on, "tomorrow");
            hand.press(screen.job(), "step accept");
            screen.settle();
            assertThat(screen.all(
                            JTextArea.class,
                            area -> area.isShowing() && area.getText().startsWith("found \"tomorrow\"")))
                    .hasSize(1);
            hand.replace(on, "2026-08-20");
            press("step accept", "outcome accept");
            assertThat(said("outcome accept"))
                    .startsWith("Nothing was changed, for these reasons:")
                    .contains("Nobody is named who signed", "Say how it was signed, in one way");
            assertThat(screen.ask(() -> on.getText()))
                    .as("what was typed stays")
                    .isEqualTo("2026-08-20");
            screen.picture("accept-refused");
        }
        assertThat(file).content().isEqualTo(before);
    }

    @Test
    void fileThatSomebodyElseChangedKeepsAStepBack() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        open(file);
        try (OnScreen shown = screen) {
            Files.writeString(file, Files.readString(file).replace("Back and side", "Theirs:"));
            new FormRobot(screen, Draft.empty()).press(screen.job(), "step issue");
            screen.waitFor(() -> screen.ask(() -> screen.job().notice().said()).startsWith("Somebody else changed"));
            screen.settle();
        }
        assertThat(file.resolveSibling("register.jsonl")).doesNotExist();
        assertThat(file).content().contains("Theirs:");
    }

    @Test
    void whatIsNotSavedIsSavedBeforeTheStep() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        open(file);
        try (OnScreen shown = screen) {
            GuiActionRunner.execute(
                    () -> screen.session().edit(screen.session().draft().typed("/title", "Front wall")));
            press("step issue", "outcome issue");
            assertThat(said("outcome issue")).startsWith("Done, and registered as 2026-014-P1.");
            assertThat(screen.session().history().isSaved()).isTrue();
        }
        assertThat(file).content().contains("\"Front wall\"");
        assertThat(file.resolveSibling("for-the-homeowner").resolve("2026-014-P1-proposal.pdf"))
                .isNotEmptyFile();
    }

    @Test
    void wallMovedAfterTheYesIsAStopAndThePageSaysThatItWasAgreed() throws IOException {
        Path file = SampleCopies.of("added-wall-then-closed", folder);
        for (String folder : List.of("for-the-homeowner", "kept")) {
            Path issued = Files.createDirectories(file.resolveSibling(folder));
            try (Stream<Path> all = Files.list(Path.of("sample-quotes/added-wall-then-closed", folder))) {
                for (Path one : all.toList()) {
                    Files.copy(one, issued.resolve(one.getFileName()));
                }
            }
        }
        open(file);
        try (OnScreen shown = screen) {
            for (String step : List.of("issue", "accept", "decide", "decline", "close")) {
                AbstractButton button = screen.all(AbstractButton.class, b -> ("step " + step).equals(b.getName()))
                        .get(0);
                assertThat(screen.ask(button::isEnabled)).as(step).isFalse();
            }
            GuiActionRunner.execute(() -> {
                screen.session().edit(screen.session().draft().typed("/walls/0/length", "41 ft"));
                screen.job().go(JobPage.WALLS);
            });
            screen.settle();
            assertThat(said("signedpage")).startsWith("Signed on 2026-07-14");
            assertThat(screen.ask(() -> screen.session().findings().get(0).id()))
                    .isEqualTo("job-moved");
            GuiActionRunner.execute(() -> screen.job().show(SidePane.FOUND));
            screen.picture("moved-after-yes");
        }
    }
}
