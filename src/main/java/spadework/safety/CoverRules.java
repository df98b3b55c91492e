// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.OutletKind;
import spadework.water.Reach;
import spadework.water.ReachKind;
import spadework.working.Worked;

/** Soil over solid pipe. Where a pipe comes to daylight its cover runs out, so its end is not asked for there. */
final class CoverRules implements Rule {
    /** Under lawn; common practice, no source. */
    private static final double LEAST_FEET = 1;

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Reach reach : facts.network().reaches()) {
            if (reach.kind() == ReachKind.MAIN || reach.kind() == ReachKind.ROOF_LINE) {
                List<Optional<Worked>> covers =
                        new ArrayList<>(List.of(reach.cover().start()));
                if (!comesToDaylight(facts, reach)) {
                    covers.add(reach.cover().end());
                }
                found.addAll(check(reach, covers));
            }
        }
        return found;
    }

    private static boolean comesToDaylight(Facts facts, Reach reach) {
        return facts.job().water().outlets().stream()
                .anyMatch(outlet -> outlet.label().equals(reach.into()) && outlet.kind() == OutletKind.DAYLIGHT);
    }

    private static List<Finding> check(Reach reach, List<Optional<Worked>> covers) {
        List<Finding> found = new ArrayList<>();
        if (covers.stream().anyMatch(Optional::isEmpty)) {
            found.add(must("cover-unmeasured", reach.label(), Found.PRACTICE));
        }
        covers.stream()
                .flatMap(Optional::stream)
                .filter(cover -> cover.number() < LEAST_FEET - 1e-6)
                .map(cover -> must(
                        "cover-thin",
                        reach.label(),
                        Found.PRACTICE,
                        "cover",
                        Amounts.feet(cover.number()),
                        "least",
                        Amounts.feet(LEAST_FEET),
                        "more",
                        Amounts.feetUp(LEAST_FEET - cover.number())))
                .findFirst()
                .ifPresent(found::add);
        return found;
    }
}
