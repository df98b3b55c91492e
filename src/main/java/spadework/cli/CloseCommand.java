// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.agreement.Closing;

/** Closes a job. */
@Command(
        name = "close",
        description = "Close a job: issue its warranty from what was built, or say what is still open.",
        footerHeading = "%nExample:%n",
        footer = "  spadework close jobs/2026-014 --on 2026-10-02")
final class CloseCommand extends StepCommand {
    @Option(
            names = "--on",
            required = true,
            paramLabel = "DATE",
            description = "The day on which it is closed, as 2026-10-02.")
    private LocalDate on;

    @Option(
            names = "--completed",
            paramLabel = "DATE",
            description = "The day from which the warranty runs (default: the last day of work).")
    private Optional<LocalDate> completed = Optional.empty();

    @Option(names = "--waive", paramLabel = "WHY", description = "Issue it although a balance is open, and why.")
    private Optional<String> waived = Optional.empty();

    @Override
    Outcome step(Path job, Office office, LocalDate today) throws IOException {
        return new Closing(office, today).close(job, new Closing.Asked(on, completed, waived));
    }
}
