// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.office.portfolio.RepriceService;
import spadework.office.reply.Reply;

/** Price an old bid with the books of now and show line by line what moves and why. */
@Command(
        name = "reprice",
        description = "Price an old bid with the books of now, show line by line what moves, and give it the new date.",
        footerHeading = "%nExample:%n",
        footer = "  spadework reprice jobs/2026-014 --on 2026-10-01 --start 2026-10-19 --finish 2026-10-30")
final class RepriceCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Option(names = "--on", paramLabel = "DATE", description = "The new date of the bid (default: today).")
    private LocalDate on;

    @Option(names = "--start", paramLabel = "DATE", description = "The new earliest start.")
    private LocalDate start;

    @Option(names = "--finish", paramLabel = "DATE", description = "The new latest finish.")
    private LocalDate finish;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        RepriceService.Dates dates = new RepriceService.Dates(
                on == null ? LocalDate.now() : on, Optional.ofNullable(start), Optional.ofNullable(finish));
        return new RepriceService().reprice(job.path(), dates, true);
    }
}
