// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.SumpFigure;
import spadework.measure.FlowRate;
import spadework.office.CalculatorData;

/** A sump: what the pump has to deliver, total head, storage and cycle. */
@Command(
        name = "sump",
        description = {
            "A sump: what the pump has to deliver, total head, storage and cycle.",
            "The pump delivers the inflow times 1.5, or name a chosen one with --pump."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure sump --inflow \"20 gpm\" --pit \"18 in\" --lift \"9 ft\""
                    + " --pipe \"1.5 in\" --length \"40 ft\""
        })
public final class SumpCommand extends Calculator {
    @Option(names = "--inflow", paramLabel = "FLOW", description = "What flows in, with its unit (gpm, gph, cfs).")
    private String inflow;

    @Option(
            names = "--pit",
            paramLabel = "LENGTH",
            description = "Inside diameter of the basin, with its unit (in, ft).")
    private String pit;

    @Option(
            names = "--depth",
            paramLabel = "LENGTH",
            description = "Inside depth of the basin, with its unit (the code's least, 24 in, when left out).")
    private String depth;

    @Option(
            names = "--lift",
            paramLabel = "LENGTH",
            description = "From the water at which the pump stops to the highest point of the pipe,"
                    + " with its unit (ft, in).")
    private String lift;

    @Option(
            names = "--pipe",
            paramLabel = "LENGTH",
            description = "Size of the plastic discharge pipe, 1 to 2.1 in, with its unit: nominal as the price"
                    + " book sells it, else inside.")
    private String pipe;

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            description = "Length of the discharge pipe, with its unit (ft, in, yd, m).")
    private String length;

    @Option(
            names = "--pump",
            paramLabel = "FLOW",
            description = "What a chosen pump delivers, with its unit (gpm, gph, cfs).")
    private String pump;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        FlowRate inflow = flags.get("--inflow", this.inflow, FlagKinds.FLOW);
        SumpFigure.Basin basin = new SumpFigure.Basin(
                flags.get("--pit", this.pit, FlagKinds.PIT),
                flags.find("--depth", this.depth, FlagKinds.PIT),
                flags.get("--lift", this.lift, FlagKinds.HEAD),
                flags.get("--pipe", this.pipe, FlagKinds.DISCHARGE),
                flags.get("--length", this.length, FlagKinds.RUN));
        Optional<FlowRate> pump = flags.find("--pump", this.pump, FlagKinds.FLOW);
        return () -> SumpFigure.of(new SumpFigure.Pumped(inflow, pump), basin, calculators.book());
    }
}
