// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.finding.Finding;
import spadework.job.LimitKind;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.SlopeTable;

/**
 * Whether the bank that the law asks for fits before what stands beside the trench, and what bears on the soil there.
 */
final class RoomRules implements Rule {
    private static final String TABLE = "29 CFR 1926 Subpart P App. B Table B-1";

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Wall wall : facts.job().walls()) {
            Bank bank = Bank.of(facts.job().site(), wall);
            bank.inTheWay().ifPresent(limit -> found.add(noSlope(wall, bank, limit)));
        }
        for (SiteLimit limit : facts.job().site().limits()) {
            found.addAll(beside(facts.job().getWall(limit.wall()), limit));
        }
        if (!facts.job().walls().isEmpty()) {
            found.add(must("machine-back", "", "29 CFR 1926.651(j)(2); 29 CFR 1926 Subpart P App. B"));
        }
        return found;
    }

    private static Finding noSlope(Wall wall, Bank bank, SiteLimit limit) {
        Length edge = Bank.reach(wall, SlopeTable.run(bank.soil()));
        String[] figures = {
            "limit",
            word(limit.kind()),
            "edge",
            edge.text(),
            "distance",
            limit.distance().text(),
            "instead",
            word(bank.protection())
        };
        String id = limit.kind() == LimitKind.UTILITY ? "no-room-utility" : "no-room";
        return Bank.isProtectedAt(wall.deepestTrench().feet())
                ? must(id, wall.label(), TABLE, figures)
                : advise(id, wall.label(), TABLE, figures);
    }

    private static List<Finding> beside(Wall wall, SiteLimit limit) {
        Length foot = wall.footing().projection().plus(wall.digging().bottomWidth());
        List<Finding> found = new ArrayList<>();
        boolean hard = limit.kind() != LimitKind.TREE && limit.kind() != LimitKind.UTILITY;
        if (hard && foot.compareTo(limit.distance()) > 0) {
            found.add(stop(
                    "no-room-at-all",
                    wall.label(),
                    Found.PRACTICE,
                    "limit",
                    word(limit.kind()),
                    "edge",
                    foot.text(),
                    "distance",
                    limit.distance().text()));
        }
        Length away = limit.distance().minus(foot);
        if (limit.kind() == LimitKind.NEIGHBOR_FOOTING && away.compareTo(wall.deepestTrench()) < 0) {
            found.add(stop(
                    "footing-in-reach",
                    wall.label(),
                    "29 CFR 1926.651(i) (from memory); IBC 1804.1",
                    "away",
                    away.text(),
                    "depth",
                    wall.deepestTrench().text()));
        }
        if (limit.kind() == LimitKind.NEIGHBOR_FOOTING && away.compareTo(wall.deepestTrench()) >= 0) {
            found.add(must(
                    "neighbor-footing-unmeasured",
                    wall.label(),
                    "29 CFR 1926.651(i) (from memory); IBC 1804.1",
                    "away",
                    away.text()));
        }
        return found;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
