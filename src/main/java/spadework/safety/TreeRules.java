package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.finding.Finding;
import spadework.job.LimitKind;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;

/** Roots of a tree that stands near the trench. Published radii differ, so the finding says which were used. */
final class TreeRules implements Rule {
    /** Vancouver WA 20.170.100, feet of radius for each inch of trunk. */
    private static final double LEAST = 1.0;

    /** Edina MN tree protection, feet of radius for each inch of trunk. */
    private static final double MOST = 1.5;

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (SiteLimit limit : facts.job().site().limits()) {
            if (limit.kind() == LimitKind.TREE) {
                found.addAll(tree(facts, limit));
            }
        }
        return found;
    }

    private static List<Finding> tree(Facts facts, SiteLimit limit) {
        if (limit.trunk().isEmpty()) {
            return List.of(must("trunk-unmeasured", limit.wall(), "root zone by trunk diameter at 4.5 ft",
                    "distance", limit.distance().text()));
        }
        Wall wall = facts.job().getWall(limit.wall());
        double inches = limit.trunk().get().inches();
        Length edge = TrenchReach.of(wall, Bank.of(wall, facts.job().site().soil().type()));
        double free = limit.distance().minus(edge).feet();
        if (free >= inches * MOST) {
            return List.of();
        }
        return List.of(advise(
                "roots",
                limit.wall(),
                "Vancouver WA 20.170.100 (1 ft an inch); City of Edina MN (1.5 ft an inch)",
                "trunk", limit.trunk().get().text(),
                "distance", limit.distance().text(),
                "edge", edge.text(),
                "zone", String.format(Locale.ROOT, "%.0f to %.0f ft", inches * LEAST, inches * MOST)));
    }
}
