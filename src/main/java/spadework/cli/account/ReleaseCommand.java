// SPDX-License-Identifier: Apache-2.0
package spadework.cli.account;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.billing.Releasing;

/** Releases claims on the house. */
@Command(
        name = "release",
        description = {
            "Release claims on the house up to an invoice: conditional while it is open or its check may still bounce,",
            "unconditional once it is paid.",
            "Where the state prescribes the words, in those words; none is made up."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework account release jobs/2026-014 --invoice I2 --cleared --on 2026-08-27")
public final class ReleaseCommand extends AccountStep {
    @Option(names = "--invoice", required = true, paramLabel = "NUMBER", description = "Up to which invoice, as I2.")
    private String invoice;

    @Option(
            names = "--cleared",
            description = "The bank has paid every check that came in. Without it a check counts as still to come.")
    private boolean cleared;

    @Override
    Outcome take(Office office, Path job, LocalDate on, LocalDate today) throws IOException {
        return new Releasing(office, today).release(job, invoice.strip(), cleared, on);
    }
}
