// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Assumptions;
import spadework.draft.Draft;
import spadework.draft.UsualJob;
import spadework.office.files.JobFile;
import spadework.office.files.JobsFolder;
import spadework.office.files.UsualJobs;
import spadework.office.reply.TemplateFolder;

/** The kinds of job that come with the program, and those that a company keeps. */
class UsualJobsTest {
    @TempDir
    Path jobs;

    @BeforeEach
    void open() throws IOException {
        JobsFolder.open(jobs, Files.readString(Path.of("sample-quotes", "company.json")));
    }

    private static Draft begun(UsualJob kind) {
        return kind.onto(JobFile.blank().typed("/issued", "2026-08-10").typed("/number", "2026-001"))
                .typed("/walls/0/length", "30 ft")
                .typed("/walls/0/depth/start", "5 ft")
                .typed("/walls/0/depth/end", "6 ft");
    }

    @Test
    void eachKindIsPricedFromTheFirstWallAndNotIssuable() throws IOException {
        Office office = Office.with(TemplateFolder.NONE);
        Path file = jobs.resolve("new-job").resolve("job.json");
        List<UsualJob> kinds = UsualJobs.near(jobs);
        assertThat(kinds).hasSizeGreaterThan(2);
        for (UsualJob kind : kinds) {
            Draft begun = begun(kind);
            assertThat(office.bid(begun.text(), file)).as(kind.name()).isInstanceOf(Refusal.class);
            Assumptions assumed = kind.in(begun);
            BidResult priced = office.bid(assumed.filled().text(), file);
            assertThat(priced).as(() -> kind.name() + ": " + priced).isInstanceOf(Bid.class);
            assertThat(((Bid) priced).total().isNegative()).isFalse();
            assertThat(assumed.filled().shown("/site/address/state"))
                    .as("the state of the company")
                    .isEqualTo("OH");
        }
    }

    @Test
    void keptKindComesFirstAndStays() throws IOException {
        UsualJob first = UsualJobs.near(jobs).get(0);
        UsualJobs.keep(jobs, first.of(begun(first).typed("/walls/0/kind", "brick"), "Brick row house"));
        List<UsualJob> now = UsualJobs.near(jobs);
        assertThat(now.get(0).name()).isEqualTo("Brick row house");
        assertThat(now.get(0).written().shown("/walls/0/kind")).isEqualTo("brick");
        assertThat(now.get(1).name()).isEqualTo(first.name());
        assertThat(jobs.resolve("usual-jobs.json")).content().doesNotContain("\"state\"");
    }

    @Test
    void fileThatIsNotUnderstoodIsTold() throws IOException {
        Files.writeString(jobs.resolve("usual-jobs.json"), "{\"usualJobs\": [{\"name\": \"x\"}]}");
        assertThatThrownBy(() -> UsualJobs.near(jobs))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("usual-jobs.json")
                .hasMessageContaining("\"written\"");
    }

    @Test
    void numberIsTheNextOfTheYear() throws IOException {
        assertThat(JobsFolder.freeNumber(jobs, 2026)).isEqualTo("2026-001");
        Files.createDirectory(jobs.resolve("2026-014"));
        Files.createDirectory(jobs.resolve("2025-900"));
        assertThat(JobsFolder.freeNumber(jobs, 2026)).isEqualTo("2026-015");
    }
}
