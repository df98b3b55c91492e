// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.paperwork.ContractJobs;

/** ORC 4722.02 (excerpt): from a price of $25,000, extras of more than $5,000 want a notice and the owner's choice. */
class ExcessCostTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}, contract {1}, change of {2} {3}: {4} findings")
    @CsvSource(delimiter = '|', textBlock = """
            OH | $30,000.00 | $5,000.00  | accepted | 0
            OH | $30,000.00 | $5,000.01  | accepted | 1
            OH | $30,000.00 | -$9,000.00 | accepted | 0
            PA | $30,000.00 | $9,000.00  | accepted | 0
            """)
    void changesOverTheLimitWantTheNoticeOfExcessCost(
            String state, String price, String added, String decided, int findings) {
        Path job = ContractJobs.in(
                folder,
                state,
                whole -> {
                    ContractJobs.changed(whole);
                    ((ObjectNode) whole.get("accepted")).put("price", price);
                    ((ObjectNode) whole.at("/changes/0/decision")).put("price", added);
                    ((ObjectNode) whole.at("/changes/0")).put("state", decided);
                },
                company -> {});

        List<Finding> found = ContractJobs.bid(job).findings().stream()
                .filter(finding -> finding.id().equals("excess-cost"))
                .toList();

        assertThat(found)
                .hasSize(findings)
                .allSatisfy(finding -> assertThat(finding.values())
                        .containsEntry("extra", added)
                        .containsEntry("limit", "$5,000.00"));
    }
}
