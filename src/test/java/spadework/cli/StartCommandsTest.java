// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From an empty folder to a job of one's own, without an editor. */
class StartCommandsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    static final String[] FIRM = {
        "name=Example Waterproofing",
        "phone=(614) 555-0143",
        "email=office@example.com",
        "address/street=9 Example Road",
        "address/city=Marlow Fork",
        "address/state=OH",
        "address/zip=43099",
        "license/label=Ohio contractor",
        "license/number=DEMO-77",
        "insurance/carrier=Example Mutual",
        "insurance/policy=DEMO-1",
        "insurance/limits=$1,000,000 for each accident",
        "insurance/until=2027-03-31"
    };

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path jobs;
    private Path job;

    @BeforeEach
    void name() {
        jobs = folder.resolve("jobs");
        job = jobs.resolve("2026-101");
    }

    private int run(Object... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Spadework.run(
                new Spadework(TODAY),
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                List.of(arguments).stream().map(Object::toString).toArray(String[]::new));
    }

    private int firm() {
        String[] all = new String[FIRM.length + 3];
        all[0] = "new";
        all[1] = "firm";
        all[2] = jobs.toString();
        System.arraycopy(FIRM, 0, all, 3, FIRM.length);
        return run((Object[]) all);
    }

    private void started() {
        assertThat(firm()).as(err.toString()).isZero();
        assertThat(run("new", "job", job)).as(err.toString()).isZero();
    }

    @Test
    void aFirmAndAJobThatPricesAtOnce() throws IOException {
        started();
        assertThat(out.toString()).contains("job.json", "Total $");
        assertThat(jobs).isDirectoryContaining("glob:**/company.json").isDirectoryContaining("glob:**/price-book.json");
        assertThat(Files.readString(job.resolve("job.json")))
                .contains("\"$schema\": \"../schemas/job.schema.json\"", "\"number\": \"2026-101\"", "2026-03-02");
        assertThat(job.resolve("../schemas/job.schema.json")).isRegularFile();
        assertThat(run("price", job)).as(err.toString()).isZero();
        assertThat(run("documents", job, "--out", folder.resolve("documents"), "--only", "scope-of-work"))
                .as(err.toString())
                .isZero();
    }

    /** What was never looked at is a finding of the first job, not silence. */
    @Test
    void theFirstJobTellsWhatNobodyMeasured() {
        started();
        assertThat(run("check", job, "--only", "must")).isZero();
        assertThat(out.toString()).contains("MUST ").doesNotContain("ADVISE ", "STOP ");
        assertThat(out.toString()).containsPattern("(?m)^0 STOP, [1-9]\\d* MUST, [1-9]\\d* ADVISE$");
        assertThat(run("check", job)).isZero();
        assertThat(out.toString()).contains("MUST ", "ADVISE ");
        assertThat(run("check", job, "--only", "grave")).isEqualTo(2);
        assertThat(err.toString()).contains("allowed are stop, must, advise");
    }

    @Test
    void aFirmWithoutItsParticularsIsRefusedWithEveryFault() {
        assertThat(run("new", "firm", jobs, "--no-questions", "name=Example Waterproofing"))
                .isEqualTo(1);
        assertThat(err.toString())
                .contains("/license/number", "/insurance/until", "/phone")
                .doesNotContain("/name:");
        assertThat(jobs).doesNotExist();
    }

    @Test
    void whatIsThereIsNeverWrittenOver() throws IOException {
        started();
        String before = Files.readString(job.resolve("job.json"));
        assertThat(run("new", "job", job)).isEqualTo(1);
        assertThat(firm()).isEqualTo(1);
        assertThat(Files.readString(job.resolve("job.json"))).isEqualTo(before);
    }

    @Test
    void aJobOutsideOfAFirmIsRefused() {
        assertThat(run("new", "job", folder.resolve("nowhere/1"))).isEqualTo(1);
        assertThat(err.toString()).contains("no company.json", "spadework new firm DIR");
        assertThat(folder.resolve("nowhere")).doesNotExist();
    }

    @Test
    void partsAreAddedUnderTheNextLabel() throws IOException {
        started();
        assertThat(run("add", "wall", job, "where=side wall", "faces=east", "length=26 ft", "depth=5 ft"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).containsPattern("Total \\$[\\d,.]+ → \\$");
        assertThat(run("add", "drain", job, "along=B", "into=O1"))
                .as(err.toString())
                .isZero();
        assertThat(run(
                        "add",
                        "option",
                        job,
                        "title=More film",
                        "why=Thicker",
                        "adds/finishes/1/wall=A",
                        "adds/finishes/1/finish/system=coating",
                        "adds/finishes/1/finish/dryFilm=80 mil"))
                .as(err.toString())
                .isZero();
        assertThat(run("add", "payment", job, "on=2026-03-02", "amount=$500.00", "how=check"))
                .as(err.toString())
                .isZero();
        assertThat(Files.readString(job.resolve("job.json")))
                .contains("\"label\": \"B\"", "\"label\": \"D2\"", "\"label\": \"OP1\"", "\"$500.00\"")
                .contains("\"surface\": \"unknown\"");
    }

    @Test
    void whatWasBuiltIsNamedByTheLabelsThatWereAgreed() throws IOException {
        started();
        assertThat(run(
                        "add",
                        "as-built",
                        job,
                        "started=2026-04-06",
                        "finished=2026-04-10",
                        "walls/A/length=39 ft",
                        "walls/A/depthStart=5 ft",
                        "walls/A/depthEnd=5 ft 2 in",
                        "pipes/D1/length=41 ft"))
                .as(err.toString())
                .isZero();
        assertThat(run(
                        "add",
                        "flow-test",
                        job,
                        "on=2026-04-10",
                        "passed=true",
                        "what=hose, ten minutes",
                        "by=Cy",
                        "line=D1"))
                .as(err.toString())
                .isZero();
        assertThat(Files.readString(job.resolve("job.json"))).contains("asBuilt", "\"39 ft\"", "flowTests");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        walls/A/length=42           | found "42"; allowed: a length with its unit
        walls/Q/length=42 ft        | found "Q" in walls/Q/length; allowed: A, or 2 for a new one
        walls/A/lenght=42 ft        | the unknown key "lenght"
        site/address/state=Nowhere  | /site/address/state
        """)
    void aValueThatDoesNotFitIsToldAndNothingIsWritten(String value, String text) throws IOException {
        started();
        String before = Files.readString(job.resolve("job.json"));
        assertThat(run("set", job, value)).isEqualTo(1);
        assertThat(err.toString()).contains(text);
        assertThat(Files.readString(job.resolve("job.json"))).isEqualTo(before);
        assertThat(run("add", "moat", job, "length=3 ft")).isEqualTo(2);
        assertThat(err.toString()).contains("moat: allowed are wall, drain");
    }

    @Test
    void valuesAreSetByLabelsAndTakenOut() throws IOException {
        started();
        assertThat(run("set", job, "walls/A/length=38 ft 6 in", "site/soil/texture=silty clay", "notes="))
                .as(err.toString())
                .isZero();
        assertThat(Files.readString(job.resolve("job.json")))
                .contains("\"38 ft 6 in\"", "silty clay")
                .doesNotContain("\"notes\"");
    }
}
