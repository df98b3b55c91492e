// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.PRACTICE;
import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.SumpPit;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.water.Range;
import spadework.water.ReachKind;
import spadework.water.SumpDesign;
import spadework.water.SumpHead;
import spadework.water.SumpInflow;

/** Basin, pump and cycle of a sump. */
final class SumpRules implements Rule {
    private static final String BASIN = "IRC P3303.1.2; IPC 1113.1.2";
    private static final String PUMP = "published sump sizing rule, 1.5 times the inflow; Hazen-Williams, C 150";

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Outlet outlet : facts.job().water().outlets()) {
            if (outlet.kind() == OutletKind.SUMP) {
                found.add(must("sump", outlet.label(), BASIN));
                found.addAll(basin(outlet));
                found.addAll(around(facts, outlet));
                found.add(observed(facts, outlet));
                found.addAll(pump(facts, outlet));
            }
        }
        return found;
    }

    private static List<Finding> basin(Outlet outlet) {
        Optional<Length> diameter = outlet.pit().flatMap(SumpPit::diameter);
        Optional<Length> depth = outlet.pit().flatMap(SumpPit::depth);
        if (diameter.isEmpty() || depth.isEmpty()) {
            return List.of(must("sump-basin-unknown", outlet.label(), BASIN));
        }
        return Found.when(
                SumpDesign.isSmall(diameter.get(), depth.get()),
                must(
                        "sump-basin-small",
                        outlet.label(),
                        BASIN,
                        "diameter",
                        diameter.get().text(),
                        "depth",
                        depth.get().text()));
    }

    /** What a sump asks for beside basin, pump and pipe. */
    private static List<Finding> around(Facts facts, Outlet outlet) {
        List<Finding> found = new ArrayList<>();
        outlet.discharge()
                .filter(Length::isPositive)
                .ifPresent(length ->
                        found.add(must("sump-discharge-trench", outlet.label(), PRACTICE, "length", length.text())));
        boolean drained =
                facts.network().into(outlet.label()).stream().anyMatch(reach -> reach.kind() == ReachKind.DRAIN);
        found.addAll(Found.when(drained, must("sump-lead", outlet.label(), PRACTICE)));
        PitPlace place = outlet.pit().map(SumpPit::place).orElse(PitPlace.UNKNOWN);
        found.addAll(Found.when(
                place != PitPlace.INSIDE,
                must(
                        "sump-riser",
                        outlet.label(),
                        BASIN,
                        "place",
                        place == PitPlace.OUTSIDE
                                ? "in the yard"
                                : "on a side of the wall that the job does not say")));
        return found;
    }

    private static List<Finding> pump(Facts facts, Outlet outlet) {
        Optional<Range> inflow = SumpInflow.of(facts.job(), facts.network(), outlet);
        if (inflow.isEmpty()) {
            return List.of(must("sump-inflow-unknown", outlet.label(), PUMP));
        }
        SumpDesign design = SumpDesign.of(facts.job(), facts.book(), outlet, inflow.get());
        List<Finding> found = new ArrayList<>();
        if (design.head().isEmpty()) {
            found.add(must("sump-head-unmeasured", outlet.label(), PUMP, "flow", Amounts.of(design.needed())));
        }
        design.head().ifPresent(head -> found.addAll(point(outlet, design, head)));
        design.shortestCycle()
                .filter(cycle -> cycle.number() < SumpDesign.CYCLE_MINUTES - 1e-9)
                .ifPresent(cycle -> found.add(advise(
                        "sump-cycle",
                        outlet.label(),
                        "UFC 3-240-04A, 10 to 15 min for motors under 20 hp",
                        "cycle",
                        Amounts.of(cycle),
                        "storage",
                        Amounts.of(design.storage()),
                        "wanted",
                        Amounts.of(design.wanted()))));
        return found;
    }

    /**
     * The point that the job gives on the curve of the pump, against the flow that is needed and the head that the pipe
     * asks for at that flow. A pump's head falls as its flow rises, so a point with more of both is enough and one with
     * less of both is not; any other leaves the answer to the curve.
     */
    private static List<Finding> point(Outlet outlet, SumpDesign design, SumpHead head) {
        Optional<Length> pumpHead = outlet.pit().flatMap(SumpPit::pumpHead);
        boolean chosen = outlet.pit().flatMap(SumpPit::pumpFlow).isPresent() && pumpHead.isPresent();
        String[] wanted = {
            "low", Amounts.of(design.inflow().low()), "high",
                    Amounts.of(design.inflow().high()),
            "flow", Amounts.of(design.needed()), "head", Amounts.of(head.total())
        };
        if (!chosen) {
            return List.of(must("sump-pump-unknown", outlet.label(), PUMP, wanted));
        }
        boolean flows = design.pump().number() >= design.needed().number() - 1e-9;
        boolean lifts = pumpHead.get().feet() >= head.total().number() - 1e-9;
        String[] values = {
            "pump", Amounts.of(design.pump()), "at", pumpHead.get().text(),
            "flow", Amounts.of(design.needed()), "head", Amounts.of(head.total())
        };
        if (flows && lifts) {
            return List.of(advise("sump-pump-fits", outlet.label(), PUMP, values));
        }
        return List.of(must(flows || lifts ? "sump-pump-curve" : "sump-pump-small", outlet.label(), PUMP, values));
    }

    /** Whether somebody watched water come in, and what that is beside the tables. */
    private static Finding observed(Facts facts, Outlet outlet) {
        Optional<Range> forecast = facts.network().arriving(outlet.label());
        Optional<FlowRate> seen = SumpInflow.observed(outlet);
        if (seen.isEmpty()) {
            return advise("sump-inflow-unwatched", outlet.label(), PRACTICE);
        }
        String high = forecast.map(range -> Amounts.of(range.high())).orElse("an unknown flow");
        boolean more = forecast.filter(
                        range -> seen.get().gallonsPerMinute() <= range.high().number())
                .isEmpty();
        return advise(
                more ? "sump-inflow-over-tables" : "sump-inflow-watched",
                outlet.label(),
                PRACTICE,
                "seen",
                String.format(Locale.ROOT, "%.1f gpm", seen.get().gallonsPerMinute()),
                "high",
                high);
    }
}
