// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.TrenchFigure;
import spadework.figure.TrenchInputs;
import spadework.job.SoilType;
import spadework.measure.Length;
import spadework.office.CalculatorData;

/** Soil dug beside a wall, bank cubic yards; top width; the lawful slope and what protection the trench needs. */
@Command(
        name = "trench",
        description = {
            "Soil dug beside a wall, bank cubic yards; top width; the lawful slope and what protection it needs.",
            "It never says that a trench is safe.",
            "Depth runs from grade to the top of the footing, and --footing is dug below it;",
            "without --footing it runs to the bottom of the trench."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure trench --length \"60 ft\" --depth \"5 ft\" --bottom \"3 ft\" --soil B",
            "  spadework figure trench --length \"60 ft\" --depth \"4 ft\" --depth-end \"6 ft\""
                    + " --bottom \"3 ft\" --side 1 --corners-out 2"
        })
public final class TrenchCommand extends Calculator {
    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            description = "Length of the trench, with its unit (ft, in, yd, m).")
    private String length;

    @Option(names = "--depth", paramLabel = "LENGTH", description = "Depth at the start, with its unit.")
    private String depth;

    @Option(
            names = "--depth-end",
            paramLabel = "LENGTH",
            description = "Depth at the end, with its unit (the same when left out).")
    private String depthEnd;

    @Option(
            names = "--bottom",
            paramLabel = "LENGTH",
            description = "Width of the bottom beside the footing, with its unit.")
    private String bottom;

    @Option(
            names = "--projection",
            paramLabel = "LENGTH",
            description = "Projection of the footing beyond the wall, with its unit (0 when left out).")
    private String projection;

    @Option(
            names = "--footing",
            paramLabel = "LENGTH",
            description = "Thickness of the footing, with its unit (0 when left out).")
    private String footing;

    @Option(
            names = "--soil",
            paramLabel = "TYPE",
            description = "Soil type as the competent person classed it: A, B, C, rock, unknown.")
    private String soil;

    @Option(
            names = "--side",
            paramLabel = "NUMBER",
            description = "Instead of --soil: run of the bank for each foot of rise, 0 to 10;"
                    + " the soil counts as unknown.")
    private String side;

    @Option(
            names = "--corners-out",
            paramLabel = "NUMBER",
            description = "Outside corners dug with it, a whole number (0 when left out).")
    private String cornersOut;

    @Option(
            names = "--corners-in",
            paramLabel = "NUMBER",
            description = "Inside corners that two trenches share, a whole number (0 when left out).")
    private String cornersIn;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Length length = flags.get("--length", this.length, FlagKinds.RUN);
        Length depth = flags.get("--depth", this.depth, FlagKinds.DEPTH);
        Optional<Length> depthEnd = flags.find("--depth-end", this.depthEnd, FlagKinds.DEPTH);
        Length bottom = flags.get("--bottom", this.bottom, FlagKinds.WIDTH);
        Optional<Length> projection = flags.find("--projection", this.projection, FlagKinds.EXTRA);
        Optional<Length> footing = flags.find("--footing", this.footing, FlagKinds.EXTRA);
        Optional<SoilType> soil = flags.find("--soil", this.soil, FlagKinds.SOIL);
        Optional<Double> side = flags.find("--side", this.side, FlagKinds.SIDE);
        Optional<Integer> cornersOut = flags.find("--corners-out", this.cornersOut, FlagKinds.CORNERS);
        Optional<Integer> cornersIn = flags.find("--corners-in", this.cornersIn, FlagKinds.CORNERS);
        return () -> TrenchFigure.of(new TrenchInputs(
                length,
                depth,
                depthEnd.orElse(depth),
                bottom,
                projection.orElse(Length.ZERO),
                footing.orElse(Length.ZERO),
                soil,
                new TrenchInputs.Sides(soil, side).bank(),
                cornersOut.orElse(0),
                cornersIn.orElse(0)));
    }
}
