// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.FrictionFigure;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.office.CalculatorData;

/** Head lost to friction in a pipe under pressure, by Hazen and Williams. */
@Command(
        name = "friction",
        description = {
            "Head lost to friction in a pipe under pressure, by Hazen and Williams.",
            "Of --flow, --id, --length and --head give three: the fourth is found."
        },
        footerHeading = "%nExample:%n",
        footer = {"  spadework figure friction --flow \"10 gpm\" --id \"1.049 in\" --c 100 --length \"100 ft\""})
public final class FrictionCommand extends Calculator {
    @Option(names = "--flow", paramLabel = "FLOW", description = "Flow, with its unit (gpm, gph, cfs).")
    private String flow;

    @Option(names = "--id", paramLabel = "LENGTH", description = "Inside diameter, with its unit (in, ft, mm).")
    private String id;

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            description = "Length of the pipe, with its unit (ft, in, yd, m).")
    private String length;

    @Option(
            names = "--head",
            paramLabel = "LENGTH",
            description = "Head lost over the length, as a height of water with its unit (ft, in, m).")
    private String head;

    @Option(
            names = "--c",
            paramLabel = "NUMBER",
            description = "Hazen-Williams C, 40 to 160 (smooth plastic, 150, when left out).")
    private String c;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<FlowRate> flow = flags.find("--flow", this.flow, FlagKinds.FLOW);
        Optional<Length> id = flags.find("--id", this.id, FlagKinds.DIAMETER);
        Optional<Length> length = flags.find("--length", this.length, FlagKinds.RUN);
        Optional<Length> head = flags.find("--head", this.head, FlagKinds.HEAD);
        Optional<Double> c = flags.find("--c", this.c, FlagKinds.HAZEN);
        return () -> FrictionFigure.of(new FrictionFigure.Known(flow, id, length, head, c));
    }
}
