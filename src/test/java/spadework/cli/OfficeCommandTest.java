// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
        assertThat(err.toString()).contains("is one of the office", "The whole office is a dot: .");
        assertThat(run("price", "../2026-999", "--office", office.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("is one of the office");
        assertThat(run("figure", "pipe", "--office", office.toString())).isEqualTo(2);
    }

    private void filled(String... samples) throws IOException {
        run("office", "set-up", "--office", office.toString());
        for (String sample : samples) {
            copyTree(Path.of("sample-quotes", sample), jobs.resolve(sample));
        }
        assertThat(run("office", "copy", jobs.toString(), office.toString()))
                .as(err.toString())
                .isZero();
    }

    private static void copyTree(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path one : all.toList()) {
                Path target = to.resolve(from.relativize(one).toString());
                if (Files.isDirectory(one)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(one, target);
                }
            }
        }
    }

    /** What a command says of the jobs folder, and of the office that has the same. */
    private void saysTheSameOfTheOffice(String... arguments) {
        String[] here = Stream.of(arguments)
                .map(word -> word.equals(".") ? jobs.toString() : word)
                .toArray(String[]::new);
        int code = run(here);
        String said = out + "|" + err;
        String[] there = Stream.concat(Stream.of(arguments), Stream.of("--office", office.toString()))
                .toArray(String[]::new);
        assertThat(run(there)).as(err.toString()).isEqualTo(code);
        String copies = folder.resolve("copies").toString();
        assertThat((out + "|" + err).replaceAll(Pattern.quote(copies) + "/[^/]+", "HERE"))
                .isEqualTo(said.replace(jobs.toString(), "HERE"))
                .isNotBlank();
    }

    @Test
    void commandsOverAllJobsSayOfAnOfficeWhatTheySayOfFolders() throws IOException {
        filled("added-wall-then-closed", "refused-type-a-and-no-fall");
        saysTheSameOfTheOffice("bids", ".", "--on", "2026-10-01");
        assertThat(out.toString()).contains("2026-041", "closed", "2026-014", "draft");
        saysTheSameOfTheOffice("bids", ".", "--find", "hathersage", "--json", "--on", "2026-10-01");
        saysTheSameOfTheOffice("feedback", ".", "--on", "2026-12-01");
        saysTheSameOfTheOffice("warranty", "list", ".");
        assertThat(out.toString()).contains("2026-041");
        saysTheSameOfTheOffice("book", "history", "DIG-MACH", ".");
        assertThat(out.toString()).contains("2026-041");
        Path report = folder.resolve("report");
        assertThat(run(
                        "season",
                        ".",
                        "--from",
                        "2026-01-01",
                        "--until",
                        "2026-12-31",
                        "--out",
                        report.toString(),
                        "--office",
                        office.toString()))
                .as(err.toString())
                .isZero();
        assertThat(report.resolve("season.pdf")).isNotEmptyFile();
    }

    @Test
    void jobChangedInTheOfficeIsSeenByTheNextCommand() throws IOException {
        filled();
        saysTheSameOfTheOffice("bids", ".", "--on", "2026-10-01");
        run("set", JOB + "/job.json", "title=Another title", "--office", office.toString());
        run("bids", ".", "--on", "2026-10-01", "--office", office.toString());
        assertThat(out.toString()).contains("Another title");
    }

    @Test
    void bookIsReadFromTheOfficeAndChangedThere() throws IOException {
        filled();
        assertThat(run("book", "show", "DIG-MACH", "--office", office.toString()))
                .as(err.toString())
                .isZero();
        String before = out.toString();
        assertThat(run(
                        "book",
                        "change",
                        "DIG-MACH",
                        "--reason",
                        "new machine",
                        "--on",
                        "2026-08-10",
                        "name=Dig by machine, changed",
                        "--office",
                        office.toString()))
                .as(err.toString())
                .isZero();
        run("book", "show", "DIG-MACH", "--office", office.toString());
        assertThat(out.toString()).isNotEqualTo(before).contains("changed");
        assertThat(run("office", "history", "", "--office", office.toString())).isZero();
        assertThat(out.toString()).contains("price-book.json");
    }

    @Test
    void jobIsCopiedWithinTheOffice() throws IOException {
        filled();
        assertThat(run(
                        "copy",
                        JOB,
                        "2026-060",
                        "--number",
                        "2026-060",
                        "--customer",
                        "Juniper Ostrand",
                        "--office",
                        office.toString()))
                .as(err.toString())
                .isZero();
        run("office", "jobs", "ostrand", "--office", office.toString());
        assertThat(out.toString()).contains("2026-060");
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
