package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.finding.Finding;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;

/** People in the trench: 29 CFR 1926.651 and .652 (T-13 to T-26). The gap between wall and bank is a trench (T-22). */
final class TrenchRules implements Rule {
    private static final Length LADDER_FROM = Length.ofFeet(4);
    private static final Length ENGINEER_OVER = Length.ofFeet(20);

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Wall wall : facts.job().walls()) {
            found.addAll(protection(wall, Bank.of(facts.job().site(), wall)));
            Length depth = wall.deepestTrench();
            if (depth.compareTo(LADDER_FROM) >= 0) {
                found.add(must("ladder", wall.label(), "29 CFR 1926.651(c)(2), 1926.1053(b)(1)", "depth", depth.text()));
            }
            if (depth.compareTo(LADDER_FROM) > 0) {
                found.add(advise("air-test", wall.label(), "29 CFR 1926.651(g)(1)", "depth", depth.text()));
            }
        }
        if (!facts.job().walls().isEmpty()) {
            found.add(must("spoil-back", "", "29 CFR 1926.651(j)(2)"));
            found.add(must("daily-inspection", "", "29 CFR 1926.651(k)(1)"));
            found.add(must("not-below-footing", "", "29 CFR 1926.651(i) (from memory); IBC 1803.1"));
            found.add(advise("state-plan", facts.job().site().address().state(), "29 CFR 1952 (from memory)"));
        }
        if (facts.job().site().soil().seepage() != Seepage.NONE) {
            found.add(must("water-in-trench", "", "29 CFR 1926.651(h) (from memory)"));
        }
        return found;
    }

    private static List<Finding> protection(Wall wall, Bank bank) {
        Length depth = wall.deepestTrench();
        String cite = "29 CFR 1926.652(a)(1)";
        if (depth.compareTo(ENGINEER_OVER) > 0) {
            return List.of(stop("trench-over-20", wall.label(), "29 CFR 1926.652(b)", "depth", depth.text()));
        }
        if (bank.protection() == Protection.UPRIGHT) {
            return List.of(
                    depth.compareTo(Bank.PROTECTED_FROM) >= 0
                            ? stop("upright-too-deep", wall.label(), cite, "depth", depth.text())
                            : must("upright-shallow", wall.label(), cite, "depth", depth.text()));
        }
        if (bank.protection() == Protection.SHIELDED) {
            return List.of(must("shield", wall.label(), cite + "; 1926.652(g)", "depth", depth.text()));
        }
        double run = bank.slope().number();
        double out = run * depth.feet();
        return List.of(must(
                "slope-back",
                wall.label(),
                "29 CFR 1926 Subpart P App. B Table B-1",
                "depth", depth.text(),
                "run", String.format(Locale.ROOT, "%.2f", run).replaceAll("\\.?0+$", ""),
                "out", Length.ofFeet(out).text()));
    }
}
