// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Seepage;

/** People in what is dug: 29 CFR 1926.651 and .652 (T-13 to T-26). The gap between wall and bank is a trench (T-22). */
final class TrenchRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        List<DigBody> bodies = DigBodies.of(facts.job());
        List<Finding> found = new ArrayList<>(
                TrenchDuties.of(bodies, facts.job().site().soil().seepage() == Seepage.FREE));
        if (bodies.stream().anyMatch(DigBody::entered)) {
            found.addAll(TrenchDuties.everywhere(facts.job().site().address().state()));
        }
        if (facts.job().site().soil().seepage() != Seepage.NONE) {
            found.add(must("water-in-trench", "", "29 CFR 1926.651(h) (from memory)"));
        }
        return found;
    }
}
