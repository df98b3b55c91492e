// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.ReplyCommand;
import spadework.office.portfolio.RepriceService;
import spadework.office.reply.Reply;

/** Price an old bid with the books of now and show line by line what moves and why. */
@Command(
        name = "reprice",
        description = "Price an old bid with the books of now and show line by line what moves and why.",
        footerHeading = "%nExample:%n",
        footer = "  spadework reprice jobs/2026-014 --on 2026-10-01 --start 2026-10-19 --finish 2026-10-30 --save")
final class RepriceCommand extends ReplyCommand {
    @Parameters(paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Option(names = "--on", paramLabel = "DATE", description = "The new date of the bid (default: today).")
    private LocalDate on;

    @Option(names = "--start", paramLabel = "DATE", description = "With --save: the new earliest start.")
    private LocalDate start;

    @Option(names = "--finish", paramLabel = "DATE", description = "With --save: the new latest finish.")
    private LocalDate finish;

    @Option(names = "--save", description = "Write the new date into the job; without it nothing is written.")
    private boolean save;

    @Override
    protected Reply reply() throws IOException {
        RepriceService.Dates dates = new RepriceService.Dates(
                on == null ? LocalDate.now() : on, Optional.ofNullable(start), Optional.ofNullable(finish));
        return new RepriceService().reprice(job, dates, save);
    }
}
