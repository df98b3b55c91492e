// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.finding.Finding;
import spadework.office.Bid;
import spadework.samples.Samples;

/** What a proposal has to say and the job does not is found before the paper is printed. */
class ProposalChecksTest {
    private static final Path SAMPLE = Path.of("sample-quotes/block-basement-to-swale");

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void theSamplesSayEverything(Path sample) {
        assertThat(ids(Samples.bid(sample))).noneMatch(id -> id.startsWith("proposal-"));
    }

    @Test
    void aJobWithoutWhatIsWrongIsFound() throws IOException {
        JsonMapper json = JsonMapper.builder().build();
        ObjectNode job = (ObjectNode) json.readTree(Files.readString(SAMPLE.resolve("job.json")));
        job.putArray("observations");

        Bid bid = (Bid) Samples.office().bid(json.writeValueAsString(job), SAMPLE.resolve("job.json"));

        assertThat(ids(bid)).contains("proposal-nothing-wrong").doesNotContain("proposal-nothing-excluded");
        assertThat(bid.findings())
                .filteredOn(finding -> finding.id().equals("proposal-nothing-wrong"))
                .allSatisfy(
                        finding -> assertThat(Samples.office().action(finding)).contains("Write what you saw"));
    }

    private static List<String> ids(Bid bid) {
        return bid.findings().stream().map(Finding::id).toList();
    }
}
