// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.measure.Figures;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.water.SumpDesign;
import spadework.water.SumpHead;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** A sump: pump point, storage and cycle (H-34, H-37 to H-41). */
public final class SumpFigure {
    private static final String BASIN = "IRC P3303.1.2; IPC 1113.1.2";

    private SumpFigure() {}

    /**
     * A basin and its discharge pipe.
     *
     * @param pit inside diameter of the basin, above 0
     * @param depth inside depth of the basin; the code's least when it is left out
     * @param lift from the water at which the pump stops to the highest point of the pipe, above 0
     * @param pipe nominal size of the discharge pipe as the book sells it, else its inside diameter
     * @param length of the discharge pipe, above 0
     */
    public record Basin(Length pit, Optional<Length> depth, Length lift, Length pipe, Length length) {}

    /**
     * The water that comes in and the pump that lifts it.
     *
     * @param chosen flow of a chosen pump; the inflow times the published factor when it is left out
     */
    public record Pumped(FlowRate inflow, Optional<FlowRate> chosen) {}

    /**
     * What the pump has to deliver and against which head, what the basin stores and how often the pump starts.
     */
    public static Answer of(Pumped pumped, Basin basin, BookFigures book) {
        FlowRate inflow = pumped.inflow();
        Optional<FlowRate> chosen = pumped.chosen();
        Given in = Inputs.given("Qi", "inflow", inflow.gallonsPerMinute(), Unit.GALLON_PER_MINUTE);
        Worked needed = SumpDesign.pumpRate(in);
        Working pump = chosen.<Working>map(flow ->
                        Inputs.given("Qp", "flow of the chosen pump", flow.gallonsPerMinute(), Unit.GALLON_PER_MINUTE))
                .orElse(needed);
        SumpHead head = SumpHead.of(
                Inputs.given("hs", "lift", basin.lift().feet(), Unit.FOOT),
                Inputs.given("L", "length of the discharge pipe", basin.length().feet(), Unit.FOOT),
                pump,
                book.discharge(basin.pipe()));
        Worked perInch = SumpDesign.gallonsPerInch(
                Inputs.given("db", "diameter of the basin", basin.pit().inches(), Unit.INCH));
        Worked storage =
                SumpDesign.storage(perInch, basin.depth().map(SumpFigure::depth).orElseGet(SumpFigure::leastDepth));
        Worked cycle = SumpDesign.shortestCycle(storage, in, pump).orElseThrow();
        List<Working> found = new ArrayList<>(List.of(pump));
        if (chosen.isPresent()) {
            found.add(needed.as("Qn"));
        }
        found.addAll(List.of(head.total(), storage, wanted(in, pump), cycle));
        List<Finding> known = new ArrayList<>(basinFindings(basin));
        known.addAll(findings(in, pump, storage, cycle));
        return Answer.of(found).with(known);
    }

    private static List<Finding> basinFindings(Basin basin) {
        Length depth = basin.depth().orElse(SumpDesign.LEAST_DEPTH);
        return SumpDesign.isSmall(basin.pit(), depth)
                ? List.of(new Finding(
                        "sump-basin-small",
                        Severity.MUST,
                        "as figured",
                        Map.of("diameter", basin.pit().text(), "depth", depth.text()),
                        BASIN))
                : List.of();
    }

    private static Working depth(Length given) {
        return Inputs.given("b", "depth of the basin", given.inches(), Unit.INCH);
    }

    private static Working leastDepth() {
        return Listed.of(
                "b",
                "depth of the basin",
                SumpDesign.LEAST_DEPTH.inches(),
                Unit.INCH,
                "least of IRC P3303.1.2, IPC 1113.1.2 (F-33)");
    }

    private static Worked wanted(Working inflow, Working pump) {
        Worked wanted = SumpDesign.wanted(inflow, pump);
        String name = "storage for a cycle of " + (int) SumpDesign.CYCLE_MINUTES + " min";
        return wanted.as(wanted.symbol(), name);
    }

    private static List<Finding> findings(Working inflow, Working pump, Working storage, Working cycle) {
        List<Finding> found = new ArrayList<>();
        if (pump.number() <= inflow.number()) {
            found.add(new Finding(
                    "pump-below-inflow",
                    Severity.MUST,
                    "",
                    Map.of("pump", text(pump), "inflow", text(inflow)),
                    "inflow against outflow"));
        }
        if (cycle.number() < SumpDesign.CYCLE_MINUTES) {
            found.add(new Finding(
                    "sump-cycle",
                    Severity.ADVISE,
                    "as figured",
                    Map.of(
                            "cycle",
                            text(cycle),
                            "storage",
                            text(storage),
                            "wanted",
                            text(SumpDesign.wanted(inflow, pump))),
                    "UFC 3-240-04A, 10 to 15 min for motors under 20 hp"));
        }
        found.add(new Finding("sump", Severity.MUST, "as figured", Map.of(), BASIN));
        found.add(new Finding(
                "never-sanitary", Severity.MUST, "", Map.of(), "local sewer ordinances; IPC 1113 (from memory)"));
        return found;
    }

    private static String text(Working number) {
        return Figures.inAnswer(number.value()) + " " + number.unit().symbol();
    }
}
