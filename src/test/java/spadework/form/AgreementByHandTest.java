// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import spadework.cli.Spadework;
import spadework.disk.SharedFile;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.page.JobPage;
import spadework.office.SampleJobFolder;
import spadework.register.Register;

/**
 * The sample of a whole job is taken from its proposal to its certificate wholly through the controls. After each step
 * the job file, the register and every issued document are, byte by byte, what the command makes of the same job.
 */
@WindowTest
class AgreementByHandTest {
    private static final String SAMPLE = "added-wall-then-closed";

    @TempDir
    Path folder;

    @TempDir
    Path twinFolder;

    private Path file;
    private Path twin;
    private Draft described;
    private OnScreen screen;
    private FormRobot hand;

    @Test
    void wholeJobIsAgreedAndClosedThroughTheControls() throws IOException {
        file = SampleCopies.of(SAMPLE, folder);
        twin = SampleCopies.of(SAMPLE, twinFolder);
        described = Draft.read(Files.readString(file)).orElseThrow();
        for (Path job : List.of(file, twin)) {
            Files.delete(job.resolveSibling("register.jsonl"));
            Files.delete(job.resolveSibling("register.head"));
        }
        Draft proposal = described;
        for (String later :
                List.of("/signing", "/options", "/accepted", "/changes", "/received", "/asBuilt", "/closed")) {
            proposal = proposal.without(later);
        }
        Files.writeString(
                file,
                proposal.typed("/walls/1/length", "24 ft")
                        .typed("/issued", "2026-07-06")
                        .text());
        try (OnScreen opened = OnScreen.job(file, SampleJobFolder.TODAY)) {
            screen = opened;
            hand = new FormRobot(opened, described);
            chooseAndIssue();
            accept();
            change();
            close();
            after();
        }
        assertThat(Draft.read(Files.readString(file))).contains(described);
        assertThat(Register.of(file.getParent()).check().faults()).isEmpty();
    }

    /** Wall B was first measured 2 ft short. */
    private void chooseAndIssue() throws IOException {
        fill(JobPage.OPTIONS);
        assertThat(screen.session().draft().at("/options")).isEqualTo(described.at("/options"));
        fill(JobPage.AGREEMENT);
        hand.press(screen.job(), "/signing/subcontractors nobody");
        screen.settle();
        assertThat(screen.session().faults()).isEmpty();
        assertThat(enabled("step issue")).isTrue();
        assertThat(enabled("step accept")).isFalse();
        assertThat(said("waits accept")).startsWith("There is nothing to accept yet");
        step("step issue", "issue", "issue");
        assertThat(said("standing")).contains("2026-041-P1 was issued on 2026-07-06");
        go(JobPage.PEOPLE);
        type("/issued", described.shown("/issued"));
        go(JobPage.WALLS);
        hand.cell(
                screen.job().pages().get(JobPage.WALLS.ordinal()),
                "/walls",
                1,
                "/length",
                described.shown("/walls/1/length"));
        go(JobPage.AGREEMENT);
        step("step issue", "issue", "issue");
        assertThat(said("standing")).contains("2026-041-P2");
    }

    private void accept() throws IOException {
        go(JobPage.AGREEMENT);
        hand.press(screen.job(), "take OP1");
        hand.press(screen.job(), "take OP4");
        for (String signature : signatures("/accepted")) {
            sign("accept", "/accepted", signature);
            step("step accept", "accept", signing("/accepted", signature, "accept", "--take", "OP1,OP4"));
        }
        assertThat(said("standing")).contains("2026-041-A1 was signed on 2026-07-14");
        assertThat(enabled("step issue")).isFalse();
        screen.picture("agreement-signed");
        go(JobPage.WALLS);
        assertThat(said("signedpage"))
                .startsWith("Signed on 2026-07-14 for " + described.shown("/accepted/price") + ".");
        screen.picture("walls-signed");
    }

    private void change() throws IOException {
        fill(JobPage.CHANGES);
        assertThat(screen.session().draft().at("/changes")).isEqualTo(pending().at("/changes"));
        for (int i = 0; i < described.rows("/changes"); i++) {
            String change = Pointer.of("/changes", i);
            String number = described.shown(change + "/number");
            go(JobPage.AGREEMENT);
            JComboBox<?> orders = screen.all(JComboBox.class, box -> "orders".equals(box.getName()))
                    .get(0);
            hand.choose(orders, number);
            assertThat(said("order")).startsWith("Waiting.");
            if (described.shown(change + "/state").equals("declined")) {
                type("change on", described.shown(change + "/issued"));
                step(
                        "step decline",
                        "change",
                        "change",
                        number,
                        "--declined",
                        "--on",
                        described.shown(change + "/issued"));
            } else {
                String decision = change + "/decision";
                for (String signature : signatures(decision)) {
                    sign("change", decision, signature);
                    step("step decide", "change", signing(decision, signature, "change", number, "--accepted"));
                }
            }
        }
        assertThat(said("standing")).contains("Change orders: 2 signed, 0 waiting, 1 declined.");
        screen.picture("agreement-changed");
    }

    /** The sample before anybody decided on its changes. */
    private Draft pending() {
        Draft pending = described;
        for (int i = 0; i < described.rows("/changes"); i++) {
            String change = Pointer.of("/changes", i);
            pending = pending.without(change + "/state").without(change + "/decision");
        }
        return pending;
    }

    private void close() throws IOException {
        assertThat(said("waits close")).startsWith("Record under As built");
        fill(JobPage.BUILT);
        assertThat(screen.session().draft().at("/received")).isEqualTo(described.at("/received"));
        assertThat(screen.session().draft().at("/asBuilt")).isEqualTo(described.at("/asBuilt"));
        screen.picture("built-filled");
        go(JobPage.AGREEMENT);
        LocalDate completed = LocalDate.parse(described.shown("/closed/completed"));
        assertThat(said("open")).isEqualTo("Nothing keeps the job open.");
        type("close on", completed.plusDays(1).toString());
        type("close completed", completed.toString());
        step(
                "step close",
                "close",
                "close",
                "--on",
                completed.plusDays(1).toString(),
                "--completed",
                completed.toString());
        assertThat(said("standing")).contains("Closed: certificate 2026-041-W1 was issued on 2026-08-22.");
        screen.picture("agreement-closed");
        go(JobPage.PAPERS);
        for (String paper :
                List.of("contract", "change-order-1", "change-order-2", "change-order-3", "completion", "warranty")) {
            assertThat(enabled(paper + " print")).as(paper).isTrue();
        }
        screen.asked().target = Optional.of(folder.resolve("change.pdf"));
        hand.press(screen.job(), "change-order-2 save");
        screen.settle();
        assertThat(folder.resolve("change.pdf")).isNotEmptyFile();
        hand.press(screen.job(), "completion look");
        screen.settle();
        screen.picture("papers-closed");
    }

    private void after() {
        go(JobPage.AGREEMENT);
        hand.press(screen.job(), "step warranty");
        screen.settle();
        assertThat(said("after")).contains("2026-041-W1", "Orla Hathersage");
        screen.asked().target = Optional.of(folder.resolve("cards"));
        hand.press(screen.job(), "step card");
        screen.settle();
        assertThat(said("after")).contains("maintenance");
        assertThat(folder.resolve("cards/2026-041-W1-maintenance.pdf")).isNotEmptyFile();
    }

    private void fill(JobPage page) {
        go(page);
        hand.fill(screen.job().pages().get(page.ordinal()));
        screen.settle();
    }

    private void go(JobPage page) {
        hand.goTo(page);
        screen.settle();
    }

    /** Where each one's signature stands. */
    private List<String> signatures(String place) {
        List<String> all = new ArrayList<>(List.of(place + "/signature"));
        for (int i = 0; i < described.rows(place + "/furtherSignatures"); i++) {
            all.add(place + "/furtherSignatures/" + i);
        }
        return all;
    }

    private void sign(String step, String place, String signature) {
        type(step + " on", described.shown(place + "/on"));
        type(step + " by", described.shown(signature + "/by/0"));
        type(step + " typed", described.shown(signature + "/typed"));
        for (String part : List.of("given", "disclosed", "paper", "withdrawal", "equipment", "access")) {
            type(step + " " + part, described.shown(signature + "/electronic/" + part));
        }
    }

    /** The same as a command line. */
    private String[] signing(String place, String signature, String... command) {
        List<String> line = new ArrayList<>(List.of(command));
        line.addAll(List.of("--on", described.shown(place + "/on")));
        line.addAll(List.of("--by", described.shown(signature + "/by/0")));
        line.addAll(List.of("--typed", described.shown(signature + "/typed")));
        line.addAll(List.of("--consented", described.shown(signature + "/electronic/given")));
        for (String part : List.of("disclosed", "paper", "withdrawal", "equipment", "access")) {
            line.addAll(List.of("--" + part, described.shown(signature + "/electronic/" + part)));
        }
        return line.toArray(String[]::new);
    }

    private void type(String field, String words) {
        hand.replace(
                screen.all(JTextField.class, one -> field.equals(one.getName())).get(0), words);
    }

    /** Presses a step's button, has the command do the same to the twin, and compares all that is there afterwards. */
    private void step(String button, String name, String... command) throws IOException {
        screen.settle();
        assertThat(screen.session().faults()).isEmpty();
        Files.writeString(twin, screen.ask(() -> screen.session().draft().text()));
        String[] line = Stream.concat(
                        Stream.of(command[0], twin.toString()),
                        Stream.of(command).skip(1))
                .toArray(String[]::new);
        StringWriter described = new StringWriter();
        int code = new CommandLine(new Spadework())
                .setErr(new PrintWriter(described))
                .execute(line);
        assertThat(code).as(String.join(" ", line) + "\n" + described).isZero();
        hand.press(screen.job(), button);
        screen.waitFor(() -> said("outcome " + name).matches("(?s)(Done|Nothing|.*Still to sign).*"));
        screen.settle();
        assertThat(said("outcome " + name)).containsPattern("Done, and registered as 2026-041-|Still to sign");
        assertThat(screen.session().history().isSaved()).isTrue();
        assertThat(tree(file.getParent())).isEqualTo(tree(twin.getParent()));
    }

    private boolean enabled(String button) {
        AbstractButton found = screen.all(AbstractButton.class, one -> button.equals(one.getName()))
                .get(0);
        return screen.ask(found::isEnabled);
    }

    private String said(String name) {
        List<JTextArea> areas = screen.all(JTextArea.class, area -> name.equals(area.getName()) && area.isShowing());
        return areas.isEmpty() ? "" : screen.ask(areas.get(0)::getText);
    }

    /** Every file with its bytes; they are the same bytes if they look the same one to one. */
    /** Every file but the empty one that whoever writes holds meanwhile: saving in the window leaves it. */
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
