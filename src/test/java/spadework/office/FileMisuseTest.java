// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import spadework.cli.Spadework;
import spadework.finding.Fault;
import spadework.office.MisuseStages.Stage;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.SignatureInput;
import spadework.press.PageText;
import spadework.register.Register;
import spadework.register.RegisterBroken;

/** Ways to bend the files of a job: taken away, swapped, rewritten, without room. */
class FileMisuseTest extends MisuseCase {
    static Stream<Misuse> misuses() {
        return Stream.of(
                new Misuse(
                        "the kept source of a proposal swapped before the yes",
                        Stage.ISSUED,
                        site -> {
                            swap(
                                    site,
                                    "kept/2026-014-P1-source.zip",
                                    "\"length\" : \"42 ft\"",
                                    "\"length\" : \"12 ft\"");
                            site.edit(job -> at(job, "/walls/0").put("length", "12 ft"));
                            return described(accept(site, SampleJobFolder.yes(), "OP1"));
                        },
                        "The source of 2026-014-P1 in the folder \"kept\" holds other bytes than the register names"),
                new Misuse(
                        "the kept source of a contract swapped with the job file",
                        Stage.CHANGED,
                        site -> {
                            swap(
                                    site,
                                    "kept/2026-014-A1-source.zip",
                                    "\"length\" : \"42 ft\"",
                                    "\"length\" : \"12 ft\"");
                            site.edit(job -> at(job, "/walls/0").put("length", "12 ft"));
                            return kept(site) + described(decide(site, 2, true, SampleJobFolder.on("2026-09-13")));
                        },
                        "contract-source-altered: The kept source of the contract 2026-014-A1 holds other bytes"),
                new Misuse(
                        "the last line of the register taken out",
                        Stage.CHANGED,
                        site -> {
                            cut(site);
                            site.edit(job -> ((ArrayNode) job.at("/changes")).remove(0));
                            return broken(() -> described(decide(site, 2, true, SampleJobFolder.on("2026-09-13"))));
                        },
                        "Nothing was registered: the register was changed."),
                new Misuse(
                        "a signed paper that is not there",
                        Stage.ISSUED,
                        site -> described(accept(site, onPaper("lost.pdf"))),
                        "lost.pdf; put the paper into the job's folder"),
                new Misuse(
                        "a signed paper of another folder",
                        Stage.ISSUED,
                        site -> described(accept(site, onPaper("../company.json"))),
                        "../company.json does not lie in "),
                new Misuse(
                        "a notice of cancellation of another folder, for which no number is taken",
                        Stage.SIGNED,
                        site -> {
                            String answer = described(new Canceling(OFFICE, TODAY)
                                    .cancel(
                                            site.folder(),
                                            new Canceling.NoticeInput(
                                                    List.of(IDA),
                                                    Optional.empty(),
                                                    LocalDate.parse("2026-08-24"),
                                                    Optional.of("../company.json"),
                                                    Optional.empty())));
                            assertThat(Files.readString(site.folder().resolve("register.jsonl")))
                                    .doesNotContain("2026-014-X1");
                            return answer;
                        },
                        "../company.json does not lie in "),
                new Misuse(
                        "the source of the proposal is taken away",
                        Stage.ISSUED,
                        site -> {
                            Files.delete(site.folder().resolve("kept/2026-014-P1-source.zip"));
                            return described(accept(site, SampleJobFolder.yes()));
                        },
                        "The source of 2026-014-P1 is no longer in the folder \"kept\""));
    }

    /** The letters of another script stand on paper as codes, so nobody signs that paper. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Łukasz Đorđević-Šimůnek, false",
        "Zoë Strauß-Ñandú y Ångström, false",
        "Maximiliana Featherstonehaugh-Cholmondeley of Wolfenbüttel-X, false",
        "李小龍, true",
        "אבי Cohen, true",
        "Ann\u202Eabc, true"
    })
    void nameThatTheTypeCannotPrintKeepsTheContractADraft(String name, boolean draft) throws IOException {
        SampleJobFolder site = MisuseStages.at(Stage.DRAFT).copy(root.resolve("here"));
        site.edit(job -> ((ArrayNode) job.at("/customer/names")).set(1, TextNode.valueOf(name)));
        done(new Issuing(OFFICE, TODAY).issue(site.folder()));
        Outcome yes = accept(site, SampleJobFolder.by("2026-08-20", IDA, name), "OP1");
        assertThat(described(yes).contains("letters-unprintable")).isEqualTo(draft);
        if (!draft) {
            done(yes);
            byte[] contract = Files.readAllBytes(site.folder().resolve("for-the-homeowner/2026-014-A1-contract.pdf"));
            assertThat(PageText.all(contract).replaceAll("-\\s+", "-").replaceAll("\\s+", " "))
                    .contains("Buyer: " + name);
        }
    }

    /**
     * A contractor takes a signed change order back: its line, its files, its place in the job file, and writes a head
     * that fits. The folder holds; the paper that the homeowner has does not fit it any more.
     */
    @Test
    void recordThatWasCutBackAndSealedAnewIsFoundByTheHomeownersPaper() throws IOException {
        SampleJobFolder site = MisuseStages.at(Stage.CHANGED).copy(root.resolve("here"));
        Path theirs = root.resolve("from-the-homeowner.pdf");
        Files.copy(
                MisuseStages.at(Stage.BUILT).folder().resolve("for-the-homeowner/2026-014-C2-change-order-2.pdf"),
                theirs);
        assertThat(check(MisuseStages.at(Stage.BUILT), theirs)).startsWith("0 ");
        cut(site);
        for (String file : List.of("for-the-homeowner", "kept")) {
            try (Stream<Path> all = Files.list(site.folder().resolve(file))) {
                for (Path one :
                        all.filter(each -> each.toString().contains("-C1-")).toList()) {
                    Files.delete(one);
                }
            }
        }
        site.edit(job -> at(job, "/changes/0").without(List.of("state", "decision")));
        String fits = Register.of(site.folder()).check().faults().get(0).allowed();
        Files.writeString(site.folder().resolve("register.head"), fits.substring(1, fits.indexOf('"', 1)) + "\n");
        assertThat(Register.of(site.folder()).check().faults())
                .as("the folder alone")
                .isEmpty();
        assertThat(check(site, theirs)).startsWith("1 ").contains("record code");
    }

    @Test
    void paperThatIsNoPdfIsToldInOurOwnWords() throws IOException {
        Path broken = Files.writeString(root.resolve("scan.pdf"), "%PDF-1.7 a scan");

        assertThat(check(MisuseStages.at(Stage.SIGNED), broken))
                .startsWith("1 ")
                .contains(broken + ": found a file that is no PDF, or a broken one; allowed: a PDF that was issued");
    }

    private static String check(SampleJobFolder site, Path paper) {
        StringWriter described = new StringWriter();
        PrintWriter to = new PrintWriter(described);
        int code = new CommandLine(new Spadework())
                .setOut(to)
                .setErr(to)
                .execute("register", "check", site.folder().toString(), "--paper", paper.toString());
        return code + " " + described;
    }

    private static void swap(SampleJobFolder site, String archive, String what, String with) throws IOException {
        Path file = site.folder().resolve(archive);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(file));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                String text = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
                out.putNextEntry(new ZipEntry(entry.getName()));
                out.write((entry.getName().endsWith("job.json") ? text.replace(what, with) : text)
                        .getBytes(StandardCharsets.ISO_8859_1));
                out.closeEntry();
            }
        }
        assertThat(bytes.toByteArray()).isNotEqualTo(Files.readAllBytes(file));
        Files.write(file, bytes.toByteArray());
    }

    /** A register that was changed is told as such, whatever the step. */
    private static String broken(Callable<String> step) throws IOException {
        try {
            return step.call();
        } catch (RegisterBroken described) {
            return described.getMessage();
        } catch (IOException unreadable) {
            throw unreadable;
        } catch (Exception other) {
            throw new IllegalStateException(other);
        }
    }

    private static void cut(SampleJobFolder site) throws IOException {
        Path register = site.folder().resolve("register.jsonl");
        List<String> lines = Files.readAllLines(register);
        Files.write(register, lines.subList(0, lines.size() - 1));
    }

    /** Here it is the record itself that was spoiled, and the check of the register says so. */
    @Override
    void leavesTheRecordSound(SampleJobFolder site) throws IOException {
        assertThat(Register.of(site.folder()).check().faults())
                .extracting(Fault::found)
                .allMatch(found -> found.equals("no such file")
                        || found.startsWith("other bytes")
                        || found.matches("\"5 [0-9a-f]{64}\""));
    }

    private static SignatureInput onPaper(String file) {
        return new SignatureInput(
                SampleJobFolder.SIGNED, List.of(IDA, TOBIAS), Optional.of(file), Optional.empty(), ConsentInput.NONE);
    }
}
