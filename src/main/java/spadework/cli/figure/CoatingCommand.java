// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.CoatingFigure;
import spadework.measure.Area;
import spadework.measure.FilmThickness;
import spadework.measure.Percent;
import spadework.measure.Volume;
import spadework.office.CalculatorData;

/** How far a coating goes: coverage, wet film, gallons, without waste. */
@Command(
        name = "coating",
        description = {
            "How far a coating goes: coverage, wet film, gallons, without waste.",
            "Give --wet, or --dry with --solids, or --area with --gallons; whatever else is left out is found."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure coating --area \"100 sf\" --wet \"60 mil\"",
            "  spadework figure coating --dry \"40 mil\" --solids 60%%"
        })
public final class CoatingCommand extends Calculator {
    @Option(names = "--area", paramLabel = "AREA", description = "Area to coat, with its unit (sf, sy, m2).")
    private String area;

    @Option(
            names = "--wet",
            paramLabel = "FILM",
            description = "Wet film of all coats together, with its unit (mil, mm).")
    private String wet;

    @Option(names = "--dry", paramLabel = "FILM", description = "Dry film, with its unit (mil, mm).")
    private String dry;

    @Option(names = "--solids", paramLabel = "PERCENT", description = "Solids by volume, in %%.")
    private String solids;

    @Option(names = "--gallons", paramLabel = "VOLUME", description = "Coating on the area, with its unit (gal).")
    private String gallons;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<Area> area = flags.find("--area", this.area, FlagKinds.AREA);
        Optional<FilmThickness> wet = flags.find("--wet", this.wet, FlagKinds.FILM);
        Optional<FilmThickness> dry = flags.find("--dry", this.dry, FlagKinds.FILM);
        Optional<Percent> solids = flags.find("--solids", this.solids, FlagKinds.SOLIDS);
        Optional<Volume> gallons = flags.find("--gallons", this.gallons, FlagKinds.GALLONS);
        return () -> CoatingFigure.of(new CoatingFigure.Known(area, wet, dry, solids, gallons));
    }
}
