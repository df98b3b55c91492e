// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.TermFigure;
import spadework.office.CalculatorData;

/** Last day of a warranty. */
@Command(
        name = "term",
        description = {"Last day of a warranty of so many years, counted from completion."},
        footerHeading = "%nExample:%n",
        footer = {"  spadework figure term --completed 2028-02-29 --years 15"})
public final class TermCommand extends Calculator {
    @Option(
            names = "--completed",
            paramLabel = "DATE",
            description = "Day of completion: year-month-day, as 2026-07-01.")
    private String completed;

    @Option(names = "--years", paramLabel = "YEARS", description = "Whole years, 1 to 99.")
    private String years;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        LocalDate completed = flags.get("--completed", this.completed, FlagKinds.DATE);
        int years = flags.get("--years", this.years, FlagKinds.YEARS);
        return () -> TermFigure.of(completed, years);
    }
}
