// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.Comparator;
import java.util.List;
import spadework.job.Job;
import spadework.job.OutletCandidate;
import spadework.measure.Unit;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * Daylight or sump: each place that was looked at, with the fall there is and the fall its distance needs.
 *
 * @param considered in the order of the job; empty when a drain's low invert is not known
 */
public record OutletChoice(List<Considered> considered) {
    /** The pipe's end stays that far above the place's ground or highest water; common practice, no source. */
    private static final Listed MARGIN =
            Listed.of("m", "pipe's end above ground or water", 0.5, Unit.FOOT, "common practice, no source");

    public OutletChoice {
        considered = List.copyOf(considered);
    }

    /**
     * One place.
     *
     * @param available fall from the lowest drain to the place, feet; negative where the place lies higher
     * @param needed distance times the least slope of the main's pipe, feet
     */
    public record Considered(OutletCandidate candidate, Worked available, Worked needed) {

        /** True when water runs there by itself. */
        public boolean falls() {
            return available.number() >= needed.number() - 1e-9;
        }
    }

    public static OutletChoice of(Job job, PriceBook book, Network network) {
        List<Reach> drains = network.reaches().stream()
                .filter(r -> r.kind() == ReachKind.DRAIN)
                .toList();
        if (drains.isEmpty() || drains.stream().anyMatch(reach -> reach.fall().isEmpty())) {
            return new OutletChoice(List.of());
        }
        Working low = drains.stream()
                .map(reach -> reach.fall().orElseThrow().end())
                .min(Comparator.comparingDouble(Working::number))
                .orElseThrow();
        Listed slope = LeastSlope.solid(Pipes.main(job, book));
        return new OutletChoice(job.water().candidates().stream()
                .map(candidate -> considered(job, candidate, low, slope))
                .toList());
    }

    private static Considered considered(Job job, OutletCandidate candidate, Working low, Listed slope) {
        String at = "/water/candidates/" + job.water().candidates().indexOf(candidate);
        Given level = Given.of("E", "level of the place", candidate.level().feet(), Unit.FOOT, at + "/level");
        Given distance = Given.of("L", "pipe to the place", candidate.distance().feet(), Unit.FOOT, at + "/distance");
        return new Considered(
                candidate,
                Worked.of(
                        "Fa",
                        "fall there is",
                        low.number() - (level.number() + MARGIN.number()),
                        Unit.FOOT,
                        new Formula(low.symbol() + " − (E + m)", "levels"),
                        low,
                        level,
                        MARGIN),
                Worked.of(
                        "Fn",
                        "fall it needs",
                        distance.number() * slope.number(),
                        Unit.FOOT,
                        new Formula("L × Sm", "distance times least slope"),
                        distance,
                        slope));
    }
}
