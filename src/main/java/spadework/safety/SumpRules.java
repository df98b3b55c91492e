package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SumpPit;
import spadework.measure.Length;
import spadework.water.Range;
import spadework.water.SumpDesign;
import spadework.water.SumpHead;

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
        boolean small = diameter.get().inches() < SumpDesign.LEAST_DIAMETER.inches() - 1e-6
                || depth.get().inches() < SumpDesign.LEAST_DEPTH.inches() - 1e-6;
        return Found.when(
                small,
                must(
                        "sump-basin-small",
                        outlet.label(),
                        BASIN,
                        "diameter",
                        diameter.get().text(),
                        "depth",
                        depth.get().text()));
    }

    private static List<Finding> pump(Facts facts, Outlet outlet) {
        Optional<Range> inflow = facts.network().arriving(outlet.label());
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

    /** The pump's point on its maker's curve against what is needed and what the pipe asks for at that flow. */
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
        boolean weak = design.pump().number() < design.needed().number() - 1e-9
                || pumpHead.get().feet() < head.total().number() - 1e-9;
        String[] values = {
            "pump", Amounts.of(design.pump()), "at", pumpHead.get().text(),
            "flow", Amounts.of(design.needed()), "head", Amounts.of(head.total())
        };
        return List.of(
                weak
                        ? must("sump-pump-small", outlet.label(), PUMP, values)
                        : advise("sump-pump-fits", outlet.label(), PUMP, values));
    }
}
