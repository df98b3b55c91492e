// SPDX-License-Identifier: Apache-2.0
package spadework.cli.account;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.billing.BillItem;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.billing.Invoicing;

/** Bills a payment or a change order. */
@Command(
        name = "invoice",
        description = {
            "Bill a payment of the contract once what it waits for is done, or an accepted change order.",
            "The last payment brings the change orders with it that were not billed before."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework account invoice jobs/2026-014 --payment 2 --on 2026-08-24")
public final class InvoiceCommand extends AccountStep {
    @ArgGroup(multiplicity = "1")
    private Item item;

    /** What is billed. */
    static final class Item {
        @Option(names = "--payment", paramLabel = "NUMBER", description = "Which payment, as the contract counts them.")
        private Integer payment;

        @Option(names = "--change", paramLabel = "NUMBER", description = "Which change order.")
        private Integer change;

        private BillItem item() {
            return payment != null ? BillItem.payment(payment) : BillItem.change(change);
        }
    }

    @Override
    Outcome take(Office office, Path job, LocalDate on, LocalDate today) throws IOException {
        return new Invoicing(office, today).invoice(job, item.item(), on);
    }
}
