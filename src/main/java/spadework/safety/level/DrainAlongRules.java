// SPDX-License-Identifier: Apache-2.0
package spadework.safety.level;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.PriceBook;
import spadework.water.Leg;

/**
 * How a footing drain lies against the footing all along its walls. The two ends of a drain and its tee are held to the
 * footing's bottom elsewhere; between them a thicker or thinner footing can bring it too low, and anywhere it can lie
 * too high.
 */
public final class DrainAlongRules {
    /** Levels that are shot by hand tell no less, feet: a quarter of an inch; common practice, no source. */
    private static final double READING = 0.25 / 12;

    private static final double NOISE = 1e-6;
    private static final String R405 = "IRC R405.1 (2009 edition on)";

    private DrainAlongRules() {}

    public static List<Finding> check(Job job, PriceBook book) {
        List<Finding> found = new ArrayList<>();
        for (FootingDrain drain : job.water().drains()) {
            Map<String, StoneProfile> profiles = StoneProfile.of(job, book, drain);
            List<Leg> legs = Leg.of(job, drain);
            for (Leg leg : legs) {
                StoneProfile profile = profiles.get(leg.wall().label());
                if (profile.measured()) {
                    high(drain, leg.wall(), profile.stations()).ifPresent(found::add);
                    low(drain, leg.wall(), between(legs, leg, profile)).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    /** The stations of a wall without those at which the whole drain starts and ends. */
    private static List<StoneStation> between(List<Leg> legs, Leg leg, StoneProfile profile) {
        List<StoneStation> stations = profile.stations();
        boolean first = leg == legs.get(0);
        boolean last = leg == legs.get(legs.size() - 1);
        boolean withoutStart = leg.backward() ? last : first;
        boolean withoutEnd = leg.backward() ? first : last;
        return stations.subList(withoutStart ? 1 : 0, stations.size() - (withoutEnd ? 1 : 0));
    }

    /**
     * Beside the footing a drain takes the water before it stands on the footing; over its top it does not. The code
     * wants the drain at or below what it protects (IRC R405.1, F-02); the footing's top as the limit is common
     * practice, no source.
     */
    private static Optional<Finding> high(FootingDrain drain, Wall wall, List<StoneStation> stations) {
        StoneStation high = stations.stream()
                .max(Comparator.comparingDouble(StoneStation::under))
                .orElseThrow();
        double over = high.under() - wall.footing().thickness().feet();
        return over < READING - NOISE
                ? Optional.empty()
                : Optional.of(found("drain-over-footing", Severity.MUST, drain, wall, high, over));
    }

    /** Lower than the footing itself, or too low for the stone under it. */
    private static Optional<Finding> low(FootingDrain drain, Wall wall, List<StoneStation> stations) {
        return stations.stream()
                .min(Comparator.comparingDouble(StoneStation::under))
                .filter(low -> low.under() < StoneProfile.BEDDING - NOISE)
                .map(low -> low.under() < -NOISE
                        ? found("drain-under-footing-along", Severity.STOP, drain, wall, low, -low.under())
                        : found("stone-under-thin-along", Severity.MUST, drain, wall, low, 0));
    }

    private static Finding found(
            String id, Severity severity, FootingDrain drain, Wall wall, StoneStation at, double off) {
        return new Finding(
                id,
                severity,
                drain.label(),
                Map.of(
                        "wall", wall.label(),
                        "at", Length.ofFeet(at.at()).text(),
                        "under", Length.ofFeet(Math.max(0, at.under())).text(),
                        "off", Length.ofFeet(off).text()),
                R405);
    }
}
