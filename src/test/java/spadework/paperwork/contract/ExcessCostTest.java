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
import spadework.money.Dollars;
import spadework.office.Bid;
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

    /** A contract that only its changes carry over Ohio's $25,000 is not silent about them; a smaller one is. */
    @ParameterizedTest(name = "wall A {0}, change of {1}: {2} findings")
    @CsvSource(delimiter = '|', textBlock = """
            30 ft | $5,000.01 | 1
            6 ft  | $5,000.01 | 0
            """)
    void contractCarriedToTheLawByItsChanges(String length, String added, int findings) {
        Path job = ContractJobs.in(
                folder,
                "OH",
                whole -> {
                    ContractJobs.changed(whole);
                    ((ObjectNode) whole.at("/walls/0")).put("length", length);
                    ((ObjectNode) whole.get("accepted")).putArray("options");
                    ((ObjectNode) whole.get("accepted"))
                            .putArray("declined")
                            .add("OP1")
                            .add("OP2");
                    ((ObjectNode) whole.at("/changes/0/decision")).put("price", added);
                },
                company -> {});
        Bid bid = ContractJobs.bid(job);
        Dollars signed = bid.dossier().contract().contracted().total();

        assertThat(signed.isLessThan(Dollars.of("25000"))).isTrue();
        assertThat(bid.dossier().contract().total().isLessThan(Dollars.of("25000")))
                .isEqualTo(findings == 0);
        assertThat(bid.findings().stream().filter(finding -> finding.id().equals("excess-cost")))
                .hasSize(findings);
    }
}
