// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.ground.SumpHole;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.measure.Length;

/**
 * A solid pipe is priced by the length that was written. Where the places on the plan ask for more than that length and
 * the {@link PipeWay#slack}, the price is too low by the difference, which is a finding with both figures. It is silent
 * on a longer pipe, which may go round something. Where a place is missing the shorter way that is known is compared
 * all the same, and what is missing is a finding of its own.
 */
public final class PipeWayRules {
    private static final String PRACTICE = "common practice, no source";

    private PipeWayRules() {}

    public static List<Finding> check(Job job) {
        List<Finding> found = new ArrayList<>();
        for (SolidRun main : job.water().mains()) {
            PipeWay way = PipeWay.ofMain(job, main);
            if (way.isLongerThan(main.length())) {
                found.add(main(job, main, way));
            }
            unknown(main.label(), way.endIsKnown()).ifPresent(found::add);
        }
        for (SolidRun line : job.water().roofLines()) {
            PipeWay way = PipeWay.ofRoofLine(job, line);
            boolean placed = PipeWay.isPlaced(job, line);
            if (way.isLongerThan(line.length())) {
                found.add(must("roof-line-shorter-than-way", line.label(), line.length(), way, Map.of()));
            }
            if (!placed) {
                found.add(advise("downspouts-unplaced", line.label()));
            }
            unknown(line.label(), way.endIsKnown()).ifPresent(found::add);
        }
        job.water().outlets().stream()
                .filter(outlet -> outlet.kind() == OutletKind.SUMP)
                .forEach(
                        outlet -> outlet.discharge().ifPresent(length -> found.addAll(discharge(job, outlet, length))));
        job.water().outlets().stream()
                .filter(outlet -> outlet.kind() == OutletKind.SUMP && !SumpHole.isInside(outlet))
                .forEach(sump -> found.addAll(leads(job, sump)));
        return found;
    }

    /** A drain straight into a basin outside: its lead is as long as the basin lies from the footing. */
    private static List<Finding> leads(Job job, Outlet sump) {
        Optional<Length> clear = sump.pit().flatMap(SumpPit::fromFooting);
        return job.water().drains().stream()
                .filter(drain -> drain.into().equals(sump.label()))
                .map(drain -> clear.map(feet -> new Finding(
                                "lead-by-plan",
                                Severity.ADVISE,
                                drain.label(),
                                Map.of("sump", sump.label(), "length", feet.text()),
                                PRACTICE))
                        .orElseGet(() -> new Finding(
                                "lead-unknown", Severity.MUST, drain.label(), Map.of("sump", sump.label()), PRACTICE)))
                .toList();
    }

    private static Finding main(Job job, SolidRun main, PipeWay way) {
        Optional<PipeWay> other = PipeWay.fromOtherEnd(job, main).filter(turned -> !turned.isLongerThan(main.length()));
        return other.map(turned -> must(
                        "main-shorter-other-end-fits",
                        main.label(),
                        main.length(),
                        way,
                        Map.of("other", text(turned.feet()))))
                .orElseGet(() -> must("main-shorter-than-way", main.label(), main.length(), way, Map.of()));
    }

    private static List<Finding> discharge(Job job, Outlet sump, Length length) {
        PipeWay way = PipeWay.ofDischarge(job, sump);
        List<Finding> found = new ArrayList<>();
        if (way.isLongerThan(length)) {
            found.add(must("discharge-shorter-than-way", sump.label(), length, way, Map.of()));
        }
        if (!way.endIsKnown()) {
            found.add(advise("discharge-way-unknown", sump.label()));
        }
        return found;
    }

    private static Optional<Finding> unknown(String label, boolean endIsKnown) {
        return endIsKnown ? Optional.empty() : Optional.of(advise("way-unknown", label));
    }

    private static Finding must(String id, String label, Length written, PipeWay way, Map<String, String> more) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("length", written.text());
        values.put("way", text(way.feet()));
        values.put("short", text(way.feet() - written.feet()));
        values.putAll(more);
        return new Finding(id, Severity.MUST, label, values, PRACTICE);
    }

    private static Finding advise(String id, String label) {
        return new Finding(id, Severity.ADVISE, label, Map.of(), PRACTICE);
    }

    private static String text(double feet) {
        return Length.ofFeet(feet).text();
    }
}
