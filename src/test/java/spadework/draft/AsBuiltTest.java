// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** As built starts as agreed, with what was added by change orders that both signed, and claims nothing seen. */
class AsBuiltTest {
    private static Draft sample() throws IOException {
        return Draft.read(Files.readString(Path.of("sample-quotes", "added-wall-then-closed", "job.json")))
                .orElseThrow();
    }

    @Test
    void wallsAndPipesOfContractAndSignedChangesAreFilledIn() throws IOException {
        Draft begun = AsBuiltStart.begun(sample().without("/asBuilt").without("/closed"));
        assertThat(begun.rows("/asBuilt/walls")).isEqualTo(sample().rows("/asBuilt/walls"));
        assertThat(begun.shown("/asBuilt/walls/0/label")).isEqualTo("A");
        assertThat(begun.shown("/asBuilt/walls/0/length")).isEqualTo("42 ft");
        assertThat(begun.shown("/asBuilt/walls/0/depthEnd")).isEqualTo(sample().shown("/walls/0/depth/end"));
        assertThat(begun.rows("/asBuilt/pipes")).isEqualTo(3);
        assertThat(begun.shown("/asBuilt/pipes/0/length"))
                .as("of a drain: the tape says it")
                .isEmpty();
        assertThat(begun.at("/asBuilt/flowTests")).isEmpty();
        assertThat(begun.at("/asBuilt/started")).isEmpty();
        assertThat(begun.at("/asBuilt/walls/0/holdPoints")).isEmpty();
    }

    @Test
    void whatIsRecordedAlreadyStays() throws IOException {
        assertThat(AsBuiltStart.begun(sample())).isEqualTo(sample());
    }
}
