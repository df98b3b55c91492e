// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.SampleJobFolder;
import spadework.store.postgres.OfficeServer;
import spadework.store.postgres.Server;

/** The commands of a shared office, and a command on a job that is taken in it. */
class OfficeCommandTest {
    private static final String JOB = "block-basement-to-swale";
    private static final String COPIES = "spadework.copies";

    @TempDir
    private Path folder;

    private Path jobs;
    private Path office;
    private StringWriter out;
    private StringWriter err;

    @BeforeEach
    void office() throws IOException {
        jobs = Files.createDirectory(folder.resolve("jobs"));
        SampleJobFolder.in(jobs);
        Server server = OfficeServer.bare();
        office = Files.writeString(folder.resolve("office.json"), OfficeServer.file(server));
        System.setProperty(COPIES, folder.resolve("copies").toString());
    }

    @AfterEach
    void forget() {
        System.clearProperty(COPIES);
    }

    @Test
    void officeIsSetUpFilledSearchedAndWorkedIn() throws IOException {
        assertThat(run("office", "jobs", "--office", office.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("is no office yet", "spadework office set-up " + office);
        assertThat(run("office", "set-up", "--office", office.toString())).isZero();
        assertThat(run("office", "copy", jobs.toString(), office.toString())).isZero();
        assertThat(out.toString()).contains("Copied: 2. The same already: 0.");
        assertThat(run("office", "jobs", "wrenf", "--office", office.toString()))
                .isZero();
        assertThat(out.toString()).contains(JOB, "2026-014", "draft");

        assertThat(run("issue", JOB, "--office", office.toString()))
                .as(err.toString())
                .isZero();
        assertThat(run("office", "jobs", "--office", office.toString())).isZero();
        assertThat(out.toString()).contains("issued");
        assertThat(run("issue", JOB, "--office", office.toString())).isZero();
        assertThat(out.toString()).contains("it was done before, with the same facts");
        assertThat(run("office", "history", JOB, "--office", office.toString())).isZero();
        assertThat(out.toString().lines()).hasSize(2);
        assertThat(run("register", "check", JOB, "--office", office.toString()))
                .as(err.toString())
                .isZero();

        Path back = folder.resolve("back");
        assertThat(run("office", "copy", office.toString(), back.toString())).isZero();
        assertThat(back.resolve(JOB).resolve("for-the-homeowner/2026-014-P1-proposal.pdf"))
                .isNotEmptyFile();
        assertThat(jobs.resolve(JOB).resolve("register.jsonl")).doesNotExist();
    }

    @Test
    void dryRunsWriteNothing() throws IOException {
        assertThat(run("office", "set-up", "--office", office.toString(), "--dry-run"))
                .isZero();
        assertThat(out.toString()).contains("the tables would be made");
        assertThat(run("office", "jobs", "--office", office.toString())).isEqualTo(2);
        run("office", "set-up", "--office", office.toString());
        assertThat(run("office", "copy", jobs.toString(), office.toString(), "--dry-run"))
                .isZero();
        assertThat(out.toString()).contains("this would be written to the office", JOB + ": ");
        assertThat(run("office", "jobs", "--office", office.toString())).isZero();
        assertThat(out.toString()).contains("The office has no job yet.");

        run("office", "copy", jobs.toString(), office.toString());
        assertThat(run("issue", JOB, "--office", office.toString(), "--dry-run"))
                .isZero();
        String file = jobs.resolve(JOB).resolve("job.json").toString();
        assertThat(run("office", "begin", file, "--office", office.toString(), "--dry-run"))
                .isZero();
        assertThat(out.toString()).contains("2026-015: job.json");
        Path visit = folder.resolve("visit");
        assertThat(run("office", "take", JOB, "--to", visit.toString(), "--office", office.toString(), "--dry-run"))
                .as(err.toString())
                .isZero();
        assertThat(visit).doesNotExist();
        run("office", "jobs", "--office", office.toString());
        assertThat(out.toString()).contains("draft").doesNotContain("issued", "2026-015");
    }

    @Test
    void whatIsNotInTheOfficeIsTold() {
        run("office", "set-up", "--office", office.toString());
        assertThat(run("price", "2026-999", "--office", office.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("The office has no job 2026-999.");
        assertThat(run("bids", jobs.toString(), "--office", office.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("This command works on folders of this machine.");
    }

    private int run(String... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        return Spadework.run(
                new Spadework(LocalDate.of(2026, 8, 10)),
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                arguments);
    }
}
