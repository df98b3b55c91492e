// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.finding.Finding;
import spadework.office.Bid;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.press.PageText;
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

    /** Whoever worries calls somebody: papers that name nobody are found, and name the office's number all the same. */
    @Test
    void aCompanyThatNamesNobodyToCallIsFound(@TempDir Path folder) throws IOException {
        JsonMapper json = JsonMapper.builder().build();
        ObjectNode company = (ObjectNode) json.readTree(Files.readString(SAMPLE.resolveSibling("company.json")));
        company.remove("contact");
        Files.writeString(folder.resolve("company.json"), json.writeValueAsString(company));
        for (String file : List.of("price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(SAMPLE.resolveSibling(file), folder.resolve(file));
        }
        Path job = Files.createDirectory(folder.resolve("job"));
        for (String file : List.of("job.json", "wet-joint.jpg", "test-pit.jpg")) {
            Files.copy(SAMPLE.resolve(file), job.resolve(file));
        }

        Outcome.Printed printed = (Outcome.Printed)
                Samples.office().documents(job, folder.resolve("out"), EnumSet.of(PaperKind.PROPOSAL));
        Path pdf = printed.files().stream()
                .filter(file -> file.toString().endsWith("proposal.pdf"))
                .findFirst()
                .orElseThrow();

        assertThat(ids((Bid) Samples.office().bid(job))).contains("proposal-nobody-to-call");
        assertThat(PageText.all(Files.readAllBytes(pdf)))
                .contains("Questions? Call", "(614) 555-0142")
                .doesNotContain("Nell Tarrow");
    }

    /** Before anybody signs, each paper of a homeowner says whom to call, by name and number. */
    @Test
    void eachPaperOfAHomeownerNamesWhomToCall() {
        Map<String, byte[]> papers = Samples.printed(Path.of("sample-quotes/added-wall-then-closed"));

        for (String paper : List.of("proposal", "contract", "change-order-1", "completion", "warranty")) {
            byte[] pdf = papers.entrySet().stream()
                    .filter(file -> file.getKey().endsWith("/" + paper + ".pdf"))
                    .map(Map.Entry::getValue)
                    .findFirst()
                    .orElseThrow();
            assertThat(PageText.all(pdf))
                    .as(paper)
                    .containsIgnoringCase("call Nell Tarrow at")
                    .contains("(614) 555-0143");
        }
    }

    private static List<String> ids(Bid bid) {
        return bid.findings().stream().map(Finding::id).toList();
    }
}
