// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.press.PageText;
import spadework.register.DocumentKind;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.warranty.Warranties;

/** The commands on a register, from a certificate that was issued. */
class AfterCareCommandTest {
    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    @TempDir
    Path jobs;

    private Path job;

    @BeforeEach
    void issue() throws IOException {
        job = Files.createDirectories(jobs.resolve("marsh/2026-014"));
        Files.createDirectories(jobs.resolve("no-register"));
        Register.of(job)
                .issue(
                        DocumentKind.CERTIFICATE,
                        "2026-014",
                        LocalDate.of(2026, 4, 3),
                        (number, mark) -> Issue.of(
                                Map.of(number + "-warranty.pdf", "paper".getBytes(UTF_8)),
                                Warranties.of(number.text())));
    }

    private int run(String... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        Spadework then = new Spadework(LocalDate.of(2041, 4, 2));
        return Spadework.run(then, new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    private int claim(String... arguments) {
        String[] all = new String[arguments.length + 3];
        all[0] = "warranty";
        all[1] = "claim";
        all[2] = job.toString();
        System.arraycopy(arguments, 0, all, 3, arguments.length);
        return run(all);
    }

    @ParameterizedTest(name = "{0} --help")
    @ValueSource(
            strings = {
                "register",
                "register check",
                "register list",
                "warranty",
                "warranty list",
                "warranty show",
                "warranty transfer",
                "warranty claim",
                "warranty card"
            })
    void helpShowsAnExample(String command) {
        assertThat(run((command + " --help").split(" "))).isZero();
        assertThat(out.toString()).contains("Example:", "spadework " + command);
    }

    @Test
    void registerThatHoldsIsToldPlainly() {
        assertThat(run("register", "check", job.toString())).isZero();
        assertThat(out.toString()).contains("nothing wrong found in 2 lines and 1 documents; seal of the last line ");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void changedDocumentIsTamperingAndTheOtherJobsAreStillExamined() throws IOException {
        Files.writeString(job.resolve("for-the-homeowner/2026-014-W1-warranty.pdf"), "Paper");
        Path other = Files.createDirectories(jobs.resolve("other"));
        Register.of(other).take(DocumentKind.PROPOSAL, "2026-015", LocalDate.of(2026, 4, 3));
        assertThat(run("register", "check", job.toString(), other.toString(), jobs.toString()))
                .isEqualTo(1);
        assertThat(err.toString().lines()).hasSize(2);
        assertThat(err.toString()).contains("2026-014-W1-warranty.pdf: found other bytes, SHA-256 ", "no register");
        assertThat(out.toString())
                .contains(
                        "note: ",
                        "the number 2026-015-P1, taken on 2026-04-03 and never issued",
                        "nothing wrong found in 1");
    }

    @Test
    void registerIsListedAsTableAndAsJson() throws IOException {
        assertThat(run("register", "list", job.toString())).isZero();
        assertThat(out.toString().lines())
                .containsExactly(
                        "1  2026-04-03  number taken        2026-014-W1",
                        "2  2026-04-03  certificate issued  2026-014-W1  for-the-homeowner/2026-014-W1-warranty.pdf");
        assertThat(run("register", "list", job.toString(), "--json")).isZero();
        JsonNode line = json().at("/lines/1");
        assertThat(line.get("event").asText()).isEqualTo("certificate issued");
        assertThat(line.at("/warranty/parts/0/lastDay").asText()).isEqualTo("2041-04-02");
    }

    @Test
    void whatIsInForceIsFoundInAWholeTreeOfFolders() throws IOException {
        assertThat(run("warranty", "list", jobs.toString(), "--on", "2028-01-15"))
                .isZero();
        assertThat(out.toString().lines())
                .containsExactly(
                        "2026-014-W1  Coated walls  2041-04-02  Ottoline Marsh and Ivo Marsh  7 Quarry Lane,"
                                + " Fallow Creek,"
                                + " OH 43099  " + job,
                        "2026-014-W1  Sump pump     2028-04-02  Ottoline Marsh and Ivo Marsh  7 Quarry Lane,"
                                + " Fallow Creek,"
                                + " OH 43099  " + job);
        assertThat(run("warranty", "list", jobs.toString(), "--on", "2028-01-15", "--months", "6", "--json"))
                .isZero();
        assertThat(json().get("inForce"))
                .singleElement()
                .satisfies(part -> assertThat(part.get("part").asText()).isEqualTo("Sump pump"));
    }

    @Test
    void changedRegisterIsToldWithTheListThatIsDrawnFromIt() throws IOException {
        Path file = job.resolve("register.jsonl");
        Files.writeString(file, Files.readString(file).replace("2041-04-02", "2051-04-02"));
        assertThat(run("warranty", "list", jobs.toString(), "--on", "2045-01-01"))
                .isEqualTo(1);
        assertThat(out.toString()).as("a line that was changed is not believed").isEmpty();
        assertThat(err.toString()).contains("register.jsonl:2:1");
        assertThat(run("warranty", "transfer", job.toString(), "--to", "A", "--on", "2027-01-01"))
                .isEqualTo(1);
        assertThat(err.toString()).contains("register.jsonl:2:1");
    }

    @Test
    void warrantyPassesOnTwiceAndNoMore() {
        assertThat(transfer("Anselm Wren", "2029-06-04", "2029-05-20")).isZero();
        assertThat(out.toString())
                .startsWith("Warranty 2026-014-W2, reissued from 2026-014-W1")
                .contains("for Anselm Wren, 7 Quarry Lane", "times left: 1")
                .contains(job.resolve("for-the-homeowner/2026-014-W2-warranty.pdf") + "\n");
        assertThat(transfer("Perpetua Holm", "2031-06-04", "2031-03-01")).isEqualTo(1);
        assertThat(err.toString()).contains("95 days after the sale; allowed: at most 60 days after it");
        assertThat(transfer("Perpetua Holm", "2031-06-04", "2031-05-01")).isZero();
        assertThat(transfer("Third Buyer", "2033-06-04", "2033-05-01")).isEqualTo(1);
        assertThat(err.toString()).contains("2026-014-W3: found no transfer left");
        run("warranty", "list", jobs.toString(), "--on", "2035-01-01");
        assertThat(out.toString()).contains("Perpetua Holm").doesNotContain("Marsh and", "Wren");
        assertThat(run("register", "check", job.toString())).isZero();
        assertThat(out.toString()).contains("nothing wrong found in 6 lines and 5 documents");
    }

    private int transfer(String to, String on, String sold) {
        return run("warranty", "transfer", job.toString(), "--to", to, "--on", on, "--sold", sold);
    }

    @Test
    void claimIsFollowedFromWhatWasSeenToTheEnd() {
        assertThat(claim("--on", "2027-03-01", "--seen", "water at the joint", "--wall", "A"))
                .isZero();
        assertThat(out.toString().lines())
                .containsExactly(
                        "Claim 2026-014-CL1: open",
                        "  2027-03-01  certificate 2026-014-W1; seen water at the joint; wall A",
                        "answer by 2027-03-08, look by 2027-03-15");
        assertThat(claim(
                        "--number",
                        "2026-014-CL1",
                        "--on",
                        "2027-03-12",
                        "--inspected",
                        "2027-03-04",
                        "--covered",
                        "no",
                        "--clause",
                        "condensation",
                        "--cause",
                        "cold wall, warm air"))
                .isZero();
        assertThat(out.toString())
                .contains(
                        "Claim 2026-014-CL1: not covered",
                        "clause Condensation",
                        "MUST claim-late: Claim 2026-014-CL1 was decided on 2027-03-12.");
        assertThat(claim(
                        "--number",
                        "2026-014-CL1",
                        "--on",
                        "2027-03-20",
                        "--covered",
                        "yes",
                        "--remedy",
                        "joint sealed",
                        "--cost",
                        "410.00",
                        "--closed",
                        "2027-03-20"))
                .isZero();
        assertThat(run("warranty", "show", job.toString(), "--on", "2027-04-01"))
                .isZero();
        assertThat(out.toString())
                .contains(
                        "  Claim 2026-014-CL1: closed",
                        "    2027-03-12  inspected 2027-03-04; covered no; clause Condensation; cause cold "
                                + "wall, warm air",
                        "    2027-03-20  covered yes; remedy joint sealed; cost 410.00; closed 2027-03-20");
        assertThat(run("register", "check", job.toString())).isZero();
    }

    /**
     * 15 USC 2310(c)(2): a warranty that leaves out what one needs to know of it misleads. So a later owner reads what
     * was turned down before, its line and its cause; the answer takes nothing away and decides no later claim.
     */
    @Test
    void laterOwnerReadsWhatWasTurnedDownAndIsNotBoundByIt() throws IOException {
        claim("--on", "2027-03-01", "--seen", "water at the joint", "--wall", "A");
        String number = "2026-014-CL1";
        assertThat(claim(
                        "--number",
                        number,
                        "--on",
                        "2027-03-04",
                        "--inspected",
                        "2027-03-04",
                        "--covered",
                        "no",
                        "--clause",
                        "condensation",
                        "--cause",
                        "cold wall, warm air"))
                .isZero();
        assertThat(claim("--on", "2029-04-20", "--seen", "pump is silent", "--wall", "D1"))
                .isZero();
        assertThat(out.toString()).doesNotContain("claim-denied-before");
        assertThat(transfer("Anselm Wren", "2029-06-01", "2029-05-20")).isZero();
        assertThat(out.toString())
                .contains(
                        "MUST transfer-claim-denied: Claim 2026-014-CL1 was turned down on 2027-03-04: Condensation",
                        "Cause: cold wall, warm air",
                        "MUST transfer-claim-open: Claim 2026-014-CL2 is not done with: open.");
        Path papers = job.resolve("for-the-homeowner");
        try (Stream<Path> files = Files.list(papers)) {
            Path pdf = files.filter(file -> file.toString().endsWith("2026-014-W2-warranty.pdf"))
                    .findFirst()
                    .orElseThrow();
            assertThat(PageText.all(Files.readAllBytes(pdf)))
                    .contains(
                            "What was claimed before you?",
                            "Not covered, decided on March 4, 2027.",
                            "Condensation.",
                            "Cold wall, warm air.",
                            "Not decided yet. It goes on with you.",
                            "It takes nothing out of this paper.");
        }
        assertThat(run("register", "list", job.toString(), "--json")).isZero();
        assertThat(json().at("/lines").findValuesAsText("claimsTold"))
                .containsExactly("2026-014-CL1 not covered, 2026-014-CL2 open");
        assertThat(claim("--on", "2029-09-01", "--seen", "water at the joint again", "--wall", "A"))
                .isZero();
        assertThat(out.toString())
                .contains(
                        "Claim 2026-014-CL3: open",
                        "MUST claim-denied-before: Claim 2026-014-CL1 at this place was turned down before");
        assertThat(claim(
                        "--number",
                        "2026-014-CL3",
                        "--on",
                        "2029-09-04",
                        "--covered",
                        "yes",
                        "--inspected",
                        "2029-09-03"))
                .isZero();
    }

    @Test
    void claimThatCannotBeWrittenDownNamesEveryFaultAndWritesNothing() throws IOException {
        claim("--on", "2027-03-01", "--seen", "water");
        byte[] before = Files.readAllBytes(job.resolve("register.jsonl"));
        assertThat(claim(
                        "--number",
                        "2026-014-CL1",
                        "--on",
                        "2027-03-02",
                        "--covered",
                        "no",
                        "--cause",
                        "x",
                        "--clause",
                        "act of god"))
                .isEqualTo(1);
        assertThat(err.toString()).startsWith("--clause: found \"act of god\"; allowed: Water that comes over");
        assertThat(claim("--number", "2026-014-CL1", "--on", "2027-03-02", "--covered", "maybe", "--cost", "$5"))
                .isEqualTo(1);
        assertThat(err.toString().lines()).hasSize(2);
        assertThat(claim("--number", "2026-014-CL9", "--on", "2027-03-02", "--covered", "yes"))
                .isEqualTo(1);
        assertThat(err.toString()).contains("allowed: 2026-014-CL1");
        assertThat(claim("--on", "2027-03-02")).isEqualTo(2);
        assertThat(Files.readAllBytes(job.resolve("register.jsonl"))).isEqualTo(before);
    }

    @Test
    void whatAPersonTypedCannotSteerTheTerminal() {
        claim("--on", "2027-03-01", "--seen", "water\u001b[2J\nnothing wrong found");
        assertThat(out.toString()).doesNotContain("\u001b").contains("water [2J nothing wrong");
        run("register", "list", job.toString());
        assertThat(out.toString()).doesNotContain("\u001b");
    }

    @Test
    void cardTellsTheSeasons() throws IOException {
        assertThat(run("warranty", "card", job.toString())).isZero();
        assertThat(out.toString().lines().limit(3))
                .containsExactly(
                        "Maintenance for warranty 2026-014-W1, 7 Quarry Lane, Fallow Creek, OH 43099",
                        "spring 2026, 2026-04-03 to 2026-05-31: Keep the gutters clean, each spring and fall."
                                + " Keep the ground falling away from the house. Test the pump each spring.",
                        "fall 2026, 2026-09-01 to 2026-11-30: Keep the gutters clean, each spring and fall."
                                + " Keep the ground falling away from the house.");
        assertThat(run("warranty", "card", job.toString(), "--json")).isZero();
        assertThat(json().at("/cards/0/seasons/30/until").asText()).isEqualTo("2041-04-02");
    }

    @Test
    void cardIsPrintedWhereItIsAskedFor() {
        Path folder = jobs.resolve("papers");
        assertThat(run("warranty", "card", job.toString(), "--out", folder.toString(), "--on", "2026-04-03"))
                .isZero();
        assertThat(out.toString().lines())
                .containsExactly(
                        folder.resolve("2026-014-W1-maintenance.pdf").toString(),
                        folder.resolve("2026-014-W1-maintenance.xlsx").toString());
        assertThat(folder.resolve("2026-014-W1-maintenance.pdf")).isNotEmptyFile();
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper().readTree(out.toString());
    }
}
