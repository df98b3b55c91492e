// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.finding.Fault;

class JobNumbersTest {
    @TempDir
    private Path jobs;

    @BeforeEach
    void company() throws IOException {
        Files.writeString(jobs.resolve("company.json"), "{}");
    }

    private Path job(String folder, String number) throws IOException {
        Path job = Files.createDirectories(jobs.resolve(folder));
        Files.writeString(job.resolve("job.json"), "{\"title\": \"x\", \"number\": \"" + number + "\"}");
        return job;
    }

    @Test
    void jobThatHasItsNumberAloneIsNotTold() throws IOException {
        Path one = job("one", "2026-014");
        job("two", "2026-015");
        assertThat(JobNumbers.taken(one)).isEmpty();
        assertThat(JobNumbers.taken(List.of(one, one))).as("named twice").isEmpty();
    }

    @Test
    void numberOfAnotherJobOfTheSameCompanyIsTold() throws IOException {
        Path one = job("one", "2026-014");
        Path two = job("deeper/two", "2026-014");
        assertThat(JobNumbers.taken(one).map(Fault::text))
                .hasValueSatisfying(text -> assertThat(text)
                        .contains("one/job.json /number: found the number \"2026-014\", which ")
                        .contains("deeper/two/job.json"));
        assertThat(JobNumbers.taken(List.of(one, two))).containsOnlyKeys(one, two);
    }

    /** Papers go into a folder that is named after the number. */
    @Test
    void numbersThatMakeTheSameFolderAreTold() throws IOException {
        Path one = job("one", "2026/14a");
        job("two", "2026-14A");
        assertThat(JobNumbers.taken(one)).isPresent();
    }

    @Test
    void jobWithoutANumberIsLeftToItsOwnFaults() throws IOException {
        Path one = job("one", "2026-014");
        Files.writeString(one.resolve("job.json"), "{\"title\": ");
        assertThat(JobNumbers.taken(one)).isEmpty();
    }
}
