// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.draft.Draft;

/** A place of a job is said as somebody at the house would say it, by the label of its wall or pipe. */
class PointerNamesTest {
    private Draft job;

    @BeforeEach
    void read() throws IOException {
        job = Draft.read(Files.readString(Path.of("sample-quotes", "added-wall-then-closed", "job.json")))
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/walls/1/condition/bow | Wall B, Bow inward",
                "/walls/0/length | Wall A, Length",
                "/water/mains/0/length | Solid pipe M1, Length",
                "/asBuilt/walls/0/length | Wall A as built, Length",
                "/changes/0/adds/walls/0/length | Change orders 1, Wall C, Length",
                "/received/1/on | Payments received 2, On",
                "/walls/7/length | Walls 8, Length",
                "/title | What the job is",
                "'' | Job"
            })
    void placeIsNamed(String pointer, String name) {
        assertThat(PointerNames.named(pointer, job)).isEqualTo(name);
    }
}
