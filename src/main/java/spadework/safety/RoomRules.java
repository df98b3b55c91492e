package spadework.safety;

import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.LimitKind;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;

/** Whether the bank that the law asks for fits before what stands beside the trench. */
final class RoomRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (SiteLimit limit : facts.job().site().limits()) {
            if (limit.kind() == LimitKind.TREE || limit.kind() == LimitKind.UTILITY) {
                continue;
            }
            Wall wall = facts.job().getWall(limit.wall());
            Length edge = TrenchReach.of(wall, Bank.of(wall, facts.job().site().soil().type()));
            if (edge.compareTo(limit.distance()) > 0) {
                found.add(stop("no-room", wall.label(), "29 CFR 1926 Subpart P App. B Table B-1",
                        "limit", Limits.word(limit.kind()), "edge", edge.text(), "distance", limit.distance().text()));
            }
        }
        return found;
    }
}
