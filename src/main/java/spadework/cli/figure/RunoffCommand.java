// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.RunoffFigure;
import spadework.measure.Area;
import spadework.measure.FlowRate;
import spadework.measure.RainRate;
import spadework.office.CalculatorData;

/** Water that runs off the ground, by the rational method. */
@Command(
        name = "runoff",
        description = {
            "Water that runs off the ground, by the rational method.",
            "Of --area, --c, --rain and --flow give three: the fourth is found."
        },
        footerHeading = "%nExample:%n",
        footer = {"  spadework figure runoff --area \"5 acre\" --c 0.62 --rain \"6.96 in/h\""})
public final class RunoffCommand extends Calculator {
    @Option(
            names = "--area",
            paramLabel = "AREA",
            description = "Area that drains there, with its unit (acre, mi2, sf, sy, m2).")
    private String area;

    @Option(names = "--c", paramLabel = "NUMBER", description = "Runoff coefficient, 0.01 to 1.")
    private String c;

    @Option(names = "--rain", paramLabel = "RAIN", description = "Rain, with its unit (in/h, mm/h).")
    private String rain;

    @Option(names = "--flow", paramLabel = "FLOW", description = "Flow, with its unit (gpm, gph, cfs).")
    private String flow;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<Area> area = flags.find("--area", this.area, FlagKinds.AREA);
        Optional<Double> c = flags.find("--c", this.c, FlagKinds.RUNOFF);
        Optional<RainRate> rain = flags.find("--rain", this.rain, FlagKinds.RAIN);
        Optional<FlowRate> flow = flags.find("--flow", this.flow, FlagKinds.FLOW);
        return () -> RunoffFigure.of(new RunoffFigure.Known(area, c, rain, flow));
    }
}
