// SPDX-License-Identifier: Apache-2.0
package spadework.cli.warranty;

import java.io.IOException;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.office.aftercare.WarrantyService;
import spadework.office.reply.Reply;

/** A warranty with all that became of it. */
@Command(
        name = "show",
        description = "The warranty of a job as it stands: terms, owners, claims.",
        footerHeading = "%nExample:%n",
        footer = "  spadework warranty show jobs/2026-014")
public final class WarrantyShowCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Option(names = "--on", paramLabel = "DATE", description = "The day, as 2028-01-15 (default: today).")
    private LocalDate on;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Override
    protected Reply reply() throws IOException {
        return WarrantyService.show(job.path(), on == null ? LocalDate.now() : on, json);
    }
}
