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
            if (profiles.values().stream().allMatch(StoneProfile::measured)) {
                for (Leg leg : Leg.of(job, drain)) {
                    List<StoneStation> stations =
                            profiles.get(leg.wall().label()).stations();
                    high(drain, leg.wall(), stations).ifPresent(found::add);
                }
                low(drain, Leg.of(job, drain), profiles).ifPresent(found::add);
            }
        }
        return found;
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

    /**
     * The lowest place between the ends: lower than the footing itself, or too low for the stone under it. Where an
     * end lies as low, that end is told, and to raise it raises the rest.
     */
    private static Optional<Finding> low(FootingDrain drain, List<Leg> legs, Map<String, StoneProfile> profiles) {
        Leg last = legs.get(legs.size() - 1);
        double ends = Math.min(
                end(profiles, legs.get(0), legs.get(0).backward()).under(),
                end(profiles, last, !last.backward()).under());
        Wall lowest = legs.stream()
                .map(Leg::wall)
                .min(Comparator.comparingDouble(wall -> low(profiles, wall).under()))
                .orElseThrow();
        StoneStation low = low(profiles, lowest);
        if (low.under() > ends - NOISE || low.under() > StoneProfile.BEDDING - NOISE) {
            return Optional.empty();
        }
        return Optional.of(
                low.under() < -NOISE
                        ? found("drain-under-footing-along", Severity.STOP, drain, lowest, low, -low.under())
                        : found("stone-under-thin-along", Severity.MUST, drain, lowest, low, 0));
    }

    private static StoneStation end(Map<String, StoneProfile> profiles, Leg leg, boolean atEnd) {
        List<StoneStation> stations = profiles.get(leg.wall().label()).stations();
        return stations.get(atEnd ? stations.size() - 1 : 0);
    }

    private static StoneStation low(Map<String, StoneProfile> profiles, Wall wall) {
        return profiles.get(wall.label()).stations().stream()
                .min(Comparator.comparingDouble(StoneStation::under))
                .orElseThrow();
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
