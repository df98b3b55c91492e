// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.StoneFigure;
import spadework.measure.Density;
import spadework.measure.Length;
import spadework.measure.Weight;
import spadework.office.CalculatorData;

/** Drain stone in a trench: cubic yards and tons, without waste. */
@Command(
        name = "stone",
        description = {
            "Drain stone in a trench: cubic yards and tons, without waste.",
            "Give --tons instead of --length for the length that a load fills."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure stone --length \"60 ft\" --bottom \"2 ft\" --height \"14 in\" --pipe \"4.215 in\"",
            "  spadework figure stone --tons \"10 ton\" --bottom \"2 ft\" --height \"14 in\""
        })
public final class StoneCommand extends Calculator {
    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            description = "Length of the trench, with its unit (ft, in, yd, m).")
    private String length;

    @Option(
            names = "--tons",
            paramLabel = "WEIGHT",
            description = "Weight of stone, with its unit (ton, lb), to find the length.")
    private String tons;

    @Option(names = "--bottom", paramLabel = "LENGTH", description = "Width of the trench's bottom, with its unit.")
    private String bottom;

    @Option(
            names = "--height",
            paramLabel = "LENGTH",
            description = "Height of the stone above the bottom, with its unit.")
    private String height;

    @Option(
            names = "--pipe",
            paramLabel = "LENGTH",
            description = "Outside diameter of the pipe in the stone, with its unit (none when left out).")
    private String pipe;

    @Option(
            names = "--side",
            paramLabel = "NUMBER",
            description = "Run of the bank for each foot of rise, 0 to 10 (0, upright, when left out).")
    private String side;

    @Option(
            names = "--footing",
            paramLabel = "LENGTH",
            description = "Thickness of the footing beside the stone, with its unit (0 when left out).")
    private String footing;

    @Option(
            names = "--projection",
            paramLabel = "LENGTH",
            description = "Projection of the footing beyond the wall, with its unit (0 when left out).")
    private String projection;

    @Option(
            names = "--density",
            paramLabel = "DENSITY",
            description = "Weight of the stone, with its unit (ton/cy, lb/cf, lb/cy); the price book's when left out.")
    private String density;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<Length> length = flags.find("--length", this.length, FlagKinds.RUN);
        Optional<Weight> tons = flags.find("--tons", this.tons, FlagKinds.WEIGHT);
        Length bottom = flags.get("--bottom", this.bottom, FlagKinds.WIDTH);
        Length height = flags.get("--height", this.height, FlagKinds.DEPTH);
        Optional<Length> pipe = flags.find("--pipe", this.pipe, FlagKinds.DIAMETER);
        Optional<Double> side = flags.find("--side", this.side, FlagKinds.SIDE);
        Optional<Length> footing = flags.find("--footing", this.footing, FlagKinds.EXTRA);
        Optional<Length> projection = flags.find("--projection", this.projection, FlagKinds.EXTRA);
        Optional<Density> density = flags.find("--density", this.density, FlagKinds.DENSITY);
        StoneFigure.Section section = new StoneFigure.Section(
                bottom,
                height,
                pipe.orElse(Length.ZERO),
                side.orElse(0.0),
                footing.orElse(Length.ZERO),
                projection.orElse(Length.ZERO));
        return () -> StoneFigure.of(new StoneFigure.Known(length, tons, density), section, calculators.book());
    }
}
