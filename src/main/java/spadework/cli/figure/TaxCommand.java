// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.TaxFigure;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.office.CalculatorData;

/** Sales tax on an amount. */
@Command(
        name = "tax",
        description = {"Sales tax on one amount, the exact product rounded once."},
        footerHeading = "%nExample:%n",
        footer = {"  spadework figure tax --amount 100.50 --rate 7%%"})
public final class TaxCommand extends Calculator {
    @Option(
            names = "--amount",
            paramLabel = "DOLLARS",
            description = "What is taxed, as 100.50 or $100.50: one item or a whole invoice.")
    private String amount;

    @Option(names = "--rate", paramLabel = "PERCENT", description = "State and local rate together, as 7%%.")
    private String rate;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Dollars amount = flags.get("--amount", this.amount, FlagKinds.PRICE);
        Percent rate = flags.get("--rate", this.rate, FlagKinds.TAX_RATE);
        return () -> TaxFigure.of(amount, rate);
    }
}
