// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.RoofFigure;
import spadework.measure.Area;
import spadework.measure.FlowRate;
import spadework.measure.RainRate;
import spadework.office.CalculatorData;

/** Water that runs off a roof, by the codes' 0. */
@Command(
        name = "roof",
        description = {
            "Water that runs off a roof, by the codes' 0.0104 gpm for each square foot and inch an hour.",
            "Of --area, --rain and --flow give two: the third is found."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure roof --area \"2506 sf\" --rain \"3 in/h\"",
            "  spadework figure roof --flow \"115 gpm\" --rain \"3 in/h\""
        })
public final class RoofCommand extends Calculator {
    @Option(
            names = "--area",
            paramLabel = "AREA",
            description = "Area of the roof in plan, with its unit (sf, sy, m2, acre).")
    private String area;

    @Option(names = "--rain", paramLabel = "RAIN", description = "Rain, with its unit (in/h, mm/h).")
    private String rain;

    @Option(names = "--flow", paramLabel = "FLOW", description = "Flow, with its unit (gpm, gph, cfs).")
    private String flow;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<Area> area = flags.find("--area", this.area, FlagKinds.AREA);
        Optional<RainRate> rain = flags.find("--rain", this.rain, FlagKinds.RAIN);
        Optional<FlowRate> flow = flags.find("--flow", this.flow, FlagKinds.FLOW);
        return () -> RoofFigure.of(new RoofFigure.Known(area, rain, flow));
    }
}
