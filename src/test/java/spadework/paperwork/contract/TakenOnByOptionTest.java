// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.drawing.plan.PlanSketch;
import spadework.office.Bid;
import spadework.paperwork.ContractJobs;
import spadework.paperwork.Dossier;

/** What a buyer does beforehand: what the firm asks of all, and what the buyer took on by an option. */
class TakenOnByOptionTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "option taken: {0}")
    @ValueSource(booleans = {true, false})
    void shrubsThatTheBuyerMovesAreAmongWhatIsDoneBeforehand(boolean taken) {
        Path job = ContractJobs.in(
                folder,
                "OH",
                whole -> {
                    ContractJobs.accepted(whole);
                    ((ObjectNode) whole.at("/options/1")).remove("adds");
                    ((ObjectNode) whole.at("/options/1"))
                            .putObject("takesAway")
                            .putObject("restoration")
                            .put("plants", 6);
                    ((ObjectNode) whole.get("accepted")).putArray("options").add(taken ? "OP2" : "OP1");
                    ((ObjectNode) whole.get("accepted")).putArray("declined").add(taken ? "OP1" : "OP2");
                },
                company -> {});
        Bid bid = ContractJobs.bid(job);
        Dossier contracted = bid.contracted();
        List<String> beforehand = ContractPaper.of(contracted, bid.proposed(), PlanSketch.of(contracted.job()))
                .conditions()
                .preparation();

        assertThat(beforehand).hasSizeGreaterThan(1);
        assertThat(beforehand.contains("Take up the shrubs that you move yourself (6) before we come"))
                .isEqualTo(taken);
    }
}
