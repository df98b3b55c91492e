// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.RootsFigure;
import spadework.measure.Length;
import spadework.office.CalculatorData;

/** Root zone of a tree by each published rule, with its source. */
@Command(
        name = "roots",
        description = {
            "Root zone of a tree by each published rule, with its source. Rules differ.",
            "Give --trunk or --girth for the radius, or --radius for the trunk whose zone ends there."
        },
        footerHeading = "%nExample:%n",
        footer = {"  spadework figure roots --trunk \"12 in\"", "  spadework figure roots --girth \"36 in\""})
public final class RootsCommand extends Calculator {
    @Option(
            names = "--trunk",
            paramLabel = "LENGTH",
            description = "Diameter of the trunk 4.5 ft above the ground, with its unit (in, ft, cm).")
    private String trunk;

    @Option(
            names = "--girth",
            paramLabel = "LENGTH",
            description = "Girth of the trunk there, with its unit (in, ft, cm).")
    private String girth;

    @Option(
            names = "--radius",
            paramLabel = "LENGTH",
            description = "Distance from the trunk's middle, with its unit (ft, in, m).")
    private String radius;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Optional<Length> trunk = flags.find("--trunk", this.trunk, FlagKinds.TRUNK);
        Optional<Length> girth = flags.find("--girth", this.girth, FlagKinds.GIRTH);
        Optional<Length> radius = flags.find("--radius", this.radius, FlagKinds.RADIUS);
        return () -> RootsFigure.of(new RootsFigure.Known(trunk, girth, radius));
    }
}
