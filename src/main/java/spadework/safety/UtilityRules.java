// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.LocateTicket;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.safety.way.NearLine;
import spadework.trench.Bank;

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
        unmarked(facts.job()).ifPresent(found::add);
        for (SiteLimit limit : facts.job().site().limits()) {
            if (limit.kind() == LimitKind.UTILITY) {
                near(facts, limit).ifPresent(found::add);
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

    /** Trenches beside the wall's own that come near the line or cross it. */
    private static Optional<Finding> near(Facts facts, SiteLimit line) {
        List<BodyNames> names = NearLine.of(facts.job(), line, facts.bodies()).stream()
                .map(BodyNames::of)
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(must(
                                "hand-dig-trench",
                                BodyNames.labels(names),
                                "29 CFR 1926.651(b)(3), (b)(4) (from memory)",
                                "at",
                                BodyNames.joined(names),
                                "wall",
                                line.wall(),
                                "distance",
                                line.distance().text(),
                                "note",
                                line.note())
                        .at(BodyNames.bodies(names)));
    }

    /** Walls that are laid back although no line before them was written down: nobody knows what the slope meets. */
    private static Optional<Finding> unmarked(Job job) {
        List<Wall> laidBack = job.walls().stream()
                .filter(wall -> Bank.of(job.site(), wall).slope().number() > 0)
                .filter(wall -> job.site().limits().stream()
                        .noneMatch(limit -> limit.kind() == LimitKind.UTILITY
                                && limit.wall().equals(wall.label())))
                .toList();
        if (laidBack.isEmpty()) {
            return Optional.empty();
        }
        List<BodyNames> names = laidBack.stream()
                .map(wall -> new BodyNames("wall", wall.label()))
                .toList();
        String[] values = {
            "at",
            BodyNames.joined(names),
            "edge",
            BodyNames.range(laidBack.stream()
                    .map(wall -> Bank.of(job.site(), wall).reach(wall))
                    .toList())
        };
        boolean asked = job.site().locateTicket().isPresent();
        Finding found = asked
                ? advise("slope-marks-unwritten", BodyNames.labels(names), Found.PRACTICE, values)
                : must("slope-unmarked", BodyNames.labels(names), Found.PRACTICE, values);
        return Optional.of(found.at(BodyNames.bodies(names)));
    }
}
