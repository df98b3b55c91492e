// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.LimitKind;
import spadework.job.LocateTicket;
import spadework.job.SiteLimit;

/** What lies in the ground: the one-call request, private lines, hand digging beside marks. */
final class UtilityRules implements Rule {
    private static final String ONE_CALL = "49 CFR 196.103";

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        Optional<String> ticket = facts.job().site().locateTicket().map(LocateTicket::number);
        found.add(
                ticket.isPresent()
                        ? must("locate-keep", "", ONE_CALL, "ticket", ticket.get())
                        : must("locate-missing", "", ONE_CALL));
        found.add(must("private-lines", "", Found.PRACTICE));
        for (SiteLimit limit : facts.job().site().limits()) {
            if (limit.kind() == LimitKind.UTILITY) {
                found.add(must(
                        "hand-dig-zone",
                        limit.wall(),
                        "state one-call laws: 18 in each side (Colorado) to 24 in (New York)",
                        "distance",
                        limit.distance().text(),
                        "note",
                        limit.note()));
            }
        }
        return found;
    }
}
