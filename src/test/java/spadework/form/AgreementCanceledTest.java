// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import spadework.cli.Spadework;
import spadework.disk.SharedFile;
import spadework.draft.Draft;
import spadework.form.page.JobPage;
import spadework.office.Office;
import spadework.office.SampleJobFolder;
import spadework.office.agreement.Issuing;
import spadework.office.reply.TemplateFolder;

/**
 * Two owners sign one after the other, days apart for the window, and one of them cancels in time. Signed Thursday,
 * August 20, 2026; the notice came on Friday: ten business days later is September 2 (16 CFR 429.1(g), 429.0(f)).
 */
@WindowTest
class AgreementCanceledTest {
    @TempDir
    Path folder;

    private OnScreen screen;

    private OnScreen open(Path job) {
        screen = OnScreen.job(job, SampleJobFolder.TODAY);
        GuiActionRunner.execute(() -> screen.job().go(JobPage.AGREEMENT));
        screen.settle();
        return screen;
    }

    @Test
    void eachSignatureIsShownAndANoticeStopsTheJob() throws IOException {
        SampleJobFolder site = SampleJobFolder.in(Files.createDirectory(folder.resolve("jobs")));
        Path job = site.folder().resolve("job.json");
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(job);
        try (OnScreen shown = open(job)) {
            new FormRobot(shown, Draft.empty()).press(shown.job(), "take OP1");
            sign("Ida Wrenfield");
            assertThat(said("outcome accept")).contains("Still to sign: Tobias Wrenfield");
            assertThat(said("standing"))
                    .contains("Ida Wrenfield signed on 2026-08-20 on paper: signed.pdf.")
                    .contains("Still to sign: Tobias Wrenfield.");
            shown.picture("agreement-one-of-two");
        }
        try (OnScreen shown = open(job)) {
            assertThat(is("take OP1", AbstractButton::isSelected))
                    .as("what the first took")
                    .isTrue();
            assertThat(is("take OP2", AbstractButton::isSelected)).isFalse();
            assertThat(is("take OP2", AbstractButton::isEnabled))
                    .as("all sign the same")
                    .isFalse();
            GuiActionRunner.execute(() -> shown.job().openAllGroups());
            assertThat(said("waits cancel")).isEqualTo("This comes after the homeowner signs.");
            sign("Tobias Wrenfield");
            assertThat(said("outcome accept")).startsWith("Done, and registered as 2026-014-A1");
            assertThat(said("standing"))
                    .contains("Ida Wrenfield signed on 2026-08-20 on paper: signed.pdf.")
                    .contains("Tobias Wrenfield signed on 2026-08-20 on paper: signed.pdf.")
                    .doesNotContain("Still to sign");

            type("cancel received", "2026-08-19");
            press("step cancel", "outcome cancel");
            assertThat(said("outcome cancel"))
                    .startsWith("Nothing was changed, for these reasons:")
                    .contains("Nobody is named", "The contract was signed on 2026-08-20");
            Path twin = twin(site);
            type("cancel received", "2026-08-21");
            type("cancel giver", "Ida Wrenfield");
            press("step cancel", "outcome cancel");
            assertThat(said("outcome cancel")).startsWith("Done, and registered as 2026-014-X1");
            assertThat(said("standing"))
                    .contains("Canceled: the notice came on 2026-08-21. $0.00 goes back by 2026-09-02")
                    .contains("2026-014-X1");
            for (String step : List.of("issue", "accept", "cancel", "change", "close")) {
                assertThat(said("waits " + step)).as(step).startsWith("The contract was canceled.");
            }
            shown.picture("agreement-canceled");
            command("cancel", twin.toString(), "--received", "2026-08-21", "--by", "Ida Wrenfield");
            assertThat(tree(site.folder())).isEqualTo(tree(twin));
        }
    }

    private void sign(String who) {
        type("accept on", "2026-08-20");
        type("accept by", who);
        type("accept file", "signed.pdf");
        press("step accept", "outcome accept");
    }

    private void press(String button, String outcome) {
        new FormRobot(screen, Draft.empty()).press(screen.job(), button);
        screen.waitFor(() -> said(outcome).matches("(?s)(Done|Nothing|.*Still to sign).*"));
        screen.settle();
    }

    private void type(String field, String words) {
        new FormRobot(screen, Draft.empty())
                .replace(
                        screen.all(JTextField.class, one -> field.equals(one.getName()))
                                .get(0),
                        words);
    }

    private boolean is(String button, Predicate<AbstractButton> what) {
        AbstractButton found = screen.all(AbstractButton.class, one -> button.equals(one.getName()))
                .get(0);
        return screen.ask(() -> what.test(found));
    }

    private String said(String name) {
        List<JTextArea> areas = screen.all(JTextArea.class, area -> name.equals(area.getName()) && area.isShowing());
        return areas.isEmpty() ? "" : screen.ask(areas.get(0)::getText);
    }

    private Path twin(SampleJobFolder site) throws IOException {
        Path jobs = site.folder().getParent();
        Path twin = Files.createDirectory(folder.resolve("twin"));
        try (Stream<Path> all = Files.walk(jobs)) {
            for (Path one : all.filter(Files::isRegularFile).toList()) {
                Path to = twin.resolve(jobs.relativize(one).toString());
                Files.createDirectories(to.getParent());
                Files.copy(one, to);
            }
        }
        return twin.resolve(jobs.relativize(site.folder()).toString());
    }

    private static void command(String... line) {
        StringWriter described = new StringWriter();
        int code = new CommandLine(new Spadework())
                .setErr(new PrintWriter(described))
                .execute(line);
        assertThat(code).as(String.join(" ", line) + "\n" + described).isZero();
    }

    /** Every file with its bytes, but the empty one that whoever writes holds meanwhile. */
    private static TreeMap<String, String> tree(Path job) throws IOException {
        TreeMap<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(job)) {
            for (Path one : all.filter(Files::isRegularFile)
                    .filter(one -> !one.endsWith(SharedFile.LOCK))
                    .toList()) {
                files.put(
                        job.relativize(one).toString(),
                        new String(Files.readAllBytes(one), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }
}
