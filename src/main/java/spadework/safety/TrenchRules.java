package spadework.safety;

import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.Seepage;
import spadework.job.Wall;
import spadework.trench.Bank;

/** People in the trench: 29 CFR 1926.651 and .652 (T-13 to T-26). The gap between wall and bank is a trench (T-22). */
final class TrenchRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Wall wall : facts.job().walls()) {
            Bank bank = Bank.of(facts.job().site(), wall);
            found.addAll(TrenchDuties.at(wall.label(), wall.deepestTrench(), bank));
        }
        if (!facts.job().walls().isEmpty()) {
            found.addAll(TrenchDuties.everywhere(facts.job().site().address().state()));
        }
        if (facts.job().site().soil().seepage() != Seepage.NONE) {
            found.add(must("water-in-trench", "", "29 CFR 1926.651(h) (from memory)"));
        }
        return found;
    }
}
