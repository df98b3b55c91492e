// SPDX-License-Identifier: Apache-2.0
package spadework.cli.account;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.billing.Statements;

/** Prints the statement of account. */
@Command(
        name = "statement",
        description = "Print the account as it stood on a day: billed, paid, open. Nothing is registered.",
        footerHeading = "%nExample:%n",
        footer = "  spadework account statement jobs/2026-014 --on 2026-09-01 --out documents")
public final class StatementCommand extends AccountStep {
    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Where the job's papers go.")
    private Path out;

    @Override
    Outcome take(Office office, Path job, LocalDate on, LocalDate today) throws IOException {
        return new Statements(office, today).statement(job, on, out);
    }
}
