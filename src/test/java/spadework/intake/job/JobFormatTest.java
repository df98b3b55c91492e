// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.intake.FormatFile;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.job.Job;
import spadework.office.files.JobFile;
import spadework.office.portfolio.Copying;

/** The way up of a job file: without a version it is of the time before versions. */
class JobFormatTest {
    private static final Path SAMPLE = Path.of("sample-quotes/block-basement-to-swale/job.json");

    @TempDir
    Path folder;

    @Test
    void fileWithoutTheKeyMeansTheSameAsTheFirstVersion() throws IOException {
        JsonNode named = FormatFile.parse(Files.readString(SAMPLE));
        assertThat(named.path("format").asInt()).isEqualTo(JobFormat.CURRENT);
        ObjectNode silent = named.deepCopy();
        silent.remove("format");

        assertThat(read(silent)).isEqualTo(read(named));
    }

    @Test
    void newFileCarriesTheVersion() {
        assertThat(FormatFile.parse(JobFile.blank().text()).path("format").asInt())
                .isEqualTo(JobFormat.CURRENT);
    }

    @Test
    void copyOfAFileWithoutTheVersionCarriesIt() throws IOException {
        ObjectNode silent = (ObjectNode) FormatFile.parse(Files.readString(SAMPLE));
        silent.remove("format");
        Path old = Files.writeString(folder.resolve("job.json"), silent.toString());
        Path copy = folder.resolve("copy/job.json");
        Copying.copy(
                old, copy, "2026-999", "Test Person", LocalDate.of(2026, 11, 2), EnumSet.noneOf(Copying.Take.class));

        assertThat(FormatFile.parse(Files.readString(copy)).path("format").asInt())
                .isEqualTo(JobFormat.CURRENT);
    }

    /** A draft keeps what is there: an old file that is edited stays without the key until it is copied. */
    @Test
    void oldFileThatIsEditedKeepsItsShape() throws IOException {
        ObjectNode silent = (ObjectNode) FormatFile.parse(Files.readString(SAMPLE));
        silent.remove("format");
        String edited = Draft.read(silent.toString())
                .orElseThrow()
                .typed("/title", "Another")
                .text();

        assertThat(FormatFile.parse(edited).has("format")).isFalse();
    }

    private static Job read(JsonNode job) {
        return ((ReadJob) new Intake().read(job.toString(), SAMPLE)).job();
    }
}
