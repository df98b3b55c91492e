// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.figure.DepositFigure;
import spadework.money.Dollars;
import spadework.office.CalculatorData;

/** Most that may be taken at signing. */
@Command(
        name = "deposit",
        description = {
            "Most that may be taken at signing where the house stands, rounded down to the cent.",
            "Not legal advice."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework figure deposit --price 14999.99 --state MD",
            "  spadework figure deposit --price \"$9,000.00\" --state MA --special-order 4000"
        })
public final class DepositCommand extends Calculator {
    @Option(names = "--price", paramLabel = "DOLLARS", description = "Contract price, as 14999.99 or $14,999.99.")
    private String price;

    @Option(names = "--state", paramLabel = "STATE", description = "State where the house stands, by its two letters.")
    private String state;

    @Option(
            names = "--special-order",
            paramLabel = "DOLLARS",
            description = "Cost of special-order material that must be ordered ahead.")
    private String specialOrder;

    @Override
    Problem read(Flags flags, CalculatorData calculators) {
        Dollars price = flags.get("--price", this.price, FlagKinds.PRICE);
        String state = flags.get("--state", this.state, FlagKinds.state(calculators));
        Dollars special =
                flags.find("--special-order", specialOrder, FlagKinds.COST).orElse(Dollars.ZERO);
        return () -> DepositFigure.of(state, calculators.law(state), price, special);
    }
}
