// SPDX-License-Identifier: Apache-2.0
package spadework.cli.account;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import spadework.money.Dollars;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.billing.Receiving;

/** Records money that came in. */
@Command(
        name = "payment",
        description = "Record a payment that came in: a receipt for the owner, and a row in the job file.",
        footerHeading = "%nExample:%n",
        footer = "  spadework account payment jobs/2026-014 --amount 5200.00 --on 2026-08-26 --how \"check 1041\"")
public final class PaymentCommand extends AccountStep {
    @Option(
            names = "--amount",
            required = true,
            paramLabel = "DOLLARS",
            converter = Amount.class,
            description = "How much, as 5200 or 5,200.50.")
    private Dollars amount;

    @Option(names = "--how", required = true, paramLabel = "HOW", description = "By what means, as \"check 1041\".")
    private String how;

    @Override
    Outcome take(Office office, Path job, LocalDate on, LocalDate today) throws IOException {
        return new Receiving(office, today).receive(job, amount, on, how.strip());
    }

    /** Reads an amount of money. */
    static final class Amount implements ITypeConverter<Dollars> {
        @Override
        public Dollars convert(String text) {
            try {
                return Dollars.of(text.strip().replace("$", "").replace(",", ""));
            } catch (ArithmeticException | NumberFormatException unreadable) {
                throw new TypeConversionException("'" + text + "' is no amount; write it as 5200 or 5200.50");
            }
        }
    }
}
