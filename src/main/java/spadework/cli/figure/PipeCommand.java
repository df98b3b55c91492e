// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.PipeFigure;
import spadework.figure.PipeKind;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.measure.Slope;
import spadework.office.CalculatorData;

/** What a round pipe carries by its own fall, full, by Manning. */
@Command(
        name = "pipe",
        description = {
            "What a round pipe carries by its own fall, full, by Manning.",
            "Of --diameter, --slope and --flow give two: the third is found.",
            "Give all three for the share of the capacity used."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure pipe --diameter \"8 in\" --slope 0.5%% --n 0.013",
            "  spadework figure pipe --flow \"60 gpm\" --slope 1%% --n 0.011",
            "  spadework figure pipe --diameter \"4 in\" --slope \"1/8 in/ft\" --kind MAIN-4"
        })
public final class PipeCommand extends Calculator {
    @Option(
            names = "--diameter",
            paramLabel = "LENGTH",
            description = "Inside diameter, with its unit (in, ft, mm); with --kind a nominal size of that kind.")
    private String diameter;

    @Option(names = "--slope", paramLabel = "SLOPE", description = "Fall, with its unit (%%, in/ft, ft/ft).")
    private String slope;

    @Option(names = "--flow", paramLabel = "FLOW", description = "Flow, with its unit (gpm, gph, cfs).")
    private String flow;

    @Option(names = "--n", paramLabel = "NUMBER", description = "Manning's n, 0.005 to 0.2.")
    private String n;

    @Option(
            names = "--kind",
            paramLabel = "PIPE",
            description = "Instead of --n: a kind of pipe of the bundled price book, or the code of one of its items.")
    private String kind;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<Length> diameter = flags.find("--diameter", this.diameter, FlagKinds.DIAMETER);
        Optional<Slope> slope = flags.find("--slope", this.slope, FlagKinds.SLOPE);
        Optional<FlowRate> flow = flags.find("--flow", this.flow, FlagKinds.FLOW);
        Optional<Double> n = flags.find("--n", this.n, FlagKinds.ROUGHNESS);
        Optional<PipeKind.Chosen> kind = flags.find("--kind", this.kind, FlagKinds.pipe(calculators.book()));
        return () -> PipeFigure.of(new PipeFigure.Known(diameter, slope, flow, n, kind));
    }
}
