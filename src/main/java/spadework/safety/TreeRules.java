// SPDX-License-Identifier: Apache-2.0
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
import spadework.trench.RootZone;

/** Roots of a tree that stands near the trench. Published radii differ, so the finding says which were used. */
final class TreeRules implements Rule {
    /** A cut nearer to a trunk than so many diameters takes roots that hold the tree up (R-05, from memory). */
    private static final double AT_CUT = 6;

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
            return List.of(must(
                    "trunk-unmeasured",
                    limit.wall(),
                    "root zone by trunk diameter at 4.5 ft",
                    "distance",
                    limit.distance().text()));
        }
        Wall wall = facts.job().getWall(limit.wall());
        Length trunk = limit.trunk().get();
        Length edge = Bank.of(facts.job().site(), wall).reach(wall);
        double free = limit.distance().minus(edge).feet();
        if (free >= RootZone.most(trunk).feet()) {
            return List.of();
        }
        List<Finding> found = new ArrayList<>();
        if (free < AT_CUT * trunk.feet()) {
            found.add(must(
                    "tree-at-cut",
                    limit.wall(),
                    "ANSI A300 (from memory)",
                    "trunk",
                    trunk.text(),
                    "free",
                    Length.ofFeet(Math.max(0, free)).text()));
        }
        found.add(advise(
                "roots",
                limit.wall(),
                RootZone.SOURCE,
                "trunk",
                trunk.text(),
                "distance",
                limit.distance().text(),
                "edge",
                edge.text(),
                "zone",
                String.format(
                        Locale.ROOT,
                        "%.0f to %.0f ft",
                        RootZone.least(trunk).feet(),
                        RootZone.most(trunk).feet())));
        return found;
    }
}
