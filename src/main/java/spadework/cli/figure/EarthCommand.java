// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.EarthFigure;
import spadework.figure.EarthInputs;
import spadework.measure.Percent;
import spadework.measure.Volume;
import spadework.office.CalculatorData;

/** The same soil in bank, loose and compacted, and the truck loads. */
@Command(
        name = "earth",
        description = {
            "The same soil in bank, loose and compacted, and the truck loads.",
            "Give one volume with --swell or --shrink. From --bank and a second volume the swell or shrink is found."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure earth --bank \"1000 cy\" --swell 30%% --truck \"7 cy\"",
            "  spadework figure earth --compacted \"500 cy\" --shrink 5%% --swell 30%%"
        })
public final class EarthCommand extends Calculator {
    @Option(names = "--bank", paramLabel = "VOLUME", description = "Soil as it lies, with its unit (cy, cf, m3).")
    private String bank;

    @Option(names = "--loose", paramLabel = "VOLUME", description = "Soil as it is hauled, with its unit (cy, cf, m3).")
    private String loose;

    @Option(
            names = "--compacted",
            paramLabel = "VOLUME",
            description = "Soil as it is filled, with its unit (cy, cf, m3).")
    private String compacted;

    @Option(names = "--swell", paramLabel = "PERCENT", description = "From bank to loose, in %% of bank.")
    private String swell;

    @Option(names = "--shrink", paramLabel = "PERCENT", description = "From bank to compacted, in %% of bank.")
    private String shrink;

    @Option(
            names = "--truck",
            paramLabel = "VOLUME",
            description = "What a truck takes, loose, with its unit (cy); the price book's when left out.")
    private String truck;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<Volume> bank = flags.find("--bank", this.bank, FlagKinds.VOLUME);
        Optional<Volume> loose = flags.find("--loose", this.loose, FlagKinds.VOLUME);
        Optional<Volume> compacted = flags.find("--compacted", this.compacted, FlagKinds.VOLUME);
        Optional<Percent> swell = flags.find("--swell", this.swell, FlagKinds.SWELL);
        Optional<Percent> shrink = flags.find("--shrink", this.shrink, FlagKinds.SHRINK);
        Optional<Volume> truck = flags.find("--truck", this.truck, FlagKinds.TRUCK);
        EarthInputs soil = new EarthInputs(bank, loose, compacted, swell, shrink, truck);
        return () -> EarthFigure.of(soil, calculators.book());
    }
}
