// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.kit.SignaturePad;
import spadework.form.page.JobPage;
import spadework.office.Office;
import spadework.office.SampleJobFolder;
import spadework.office.agreement.Issuing;
import spadework.office.reply.TemplateFolder;

/** A name drawn on the screen needs the consent that a typed one needs (15 USC 7001(c)), and its picture is kept. */
@WindowTest
class DrawnSignatureTest {
    @TempDir
    Path folder;

    private OnScreen screen;

    @Test
    void drawnNameNeedsConsentAndIsKept() throws IOException {
        SampleJobFolder site = SampleJobFolder.in(Files.createDirectory(folder.resolve("jobs")));
        Path job = site.folder().resolve("job.json");
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(job);
        try (OnScreen shown = OnScreen.job(job, SampleJobFolder.TODAY)) {
            screen = shown;
            GuiActionRunner.execute(() -> screen.job().go(JobPage.AGREEMENT));
            screen.settle();
            draw();
            press("accept keep");
            type("accept on", "2026-08-20");
            type("accept by", "Ida Wrenfield");
            press("step accept");
            assertThat(said("outcome accept")).contains("15 USC 7001(c)");
            assertThat(pictures(site.folder())).hasSize(1);
            type("accept given", "2026-08-20");
            type("accept disclosed", "2026-08-20");
            type("accept paper", "by mail, without charge");
            type("accept withdrawal", "a note to the office; nothing else changes");
            type("accept equipment", "a program that shows PDF files");
            type("accept access", "opened the sample that we mailed");
            press("step accept");
            assertThat(said("outcome accept")).contains("Still to sign: Tobias Wrenfield");
            assertThat(said("standing")).contains("Ida Wrenfield signed on 2026-08-20");
        }
        assertThat(pictures(site.folder()))
                .as("beside the job, and with what is kept of the signature")
                .hasSizeGreaterThan(1);
    }

    private void draw() {
        SignaturePad pad = screen.all(SignaturePad.class, one -> "accept pad".equals(one.getName()))
                .get(0);
        GuiActionRunner.execute(() -> pad.scrollRectToVisible(new Rectangle(0, 0, pad.getWidth(), pad.getHeight())));
        screen.settle();
        screen.robot().moveMouse(pad, new Point(40, 60));
        screen.robot().pressMouse(pad, new Point(40, 60), MouseButton.LEFT_BUTTON);
        for (int x = 44; x < 160; x += 6) {
            screen.robot().moveMouse(pad, new Point(x, 50 + x % 18 * 2));
        }
        screen.robot().releaseMouseButtons();
        screen.settle();
    }

    private static List<String> pictures(Path job) throws IOException {
        try (Stream<Path> all = Files.walk(job)) {
            return all.map(file -> file.getFileName().toString())
                    .filter(name -> name.contains("signature") && name.endsWith(".png"))
                    .toList();
        }
    }

    private void press(String button) {
        new FormRobot(screen, Draft.empty()).press(screen.job(), button);
        screen.settle();
    }

    private void type(String field, String words) {
        new FormRobot(screen, Draft.empty())
                .replace(
                        screen.all(JTextField.class, one -> field.equals(one.getName()))
                                .get(0),
                        words);
    }

    private String said(String name) {
        List<JTextArea> areas = screen.all(JTextArea.class, area -> name.equals(area.getName()) && area.isShowing());
        return areas.isEmpty() ? "" : screen.ask(areas.get(0)::getText);
    }
}
