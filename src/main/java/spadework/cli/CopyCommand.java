// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.office.portfolio.Copying;
import spadework.office.reply.Reply;

/** Start a bid for a new customer from an old one, taking what is named. */
@Command(
        name = "copy",
        description = "Start a bid for a new customer from an old one, taking what is named.",
        footerHeading = "%nExample:%n",
        footer = "  spadework copy jobs/2026-014 jobs/2026-060 --number 2026-060 --customer \"Juniper Ostrand\" --take"
                + " walls,terms")
final class CopyCommand extends ReplyCommand {
    @Parameters(index = "0", paramLabel = "JOB", description = "The old job file, or its folder.")
    private Path job;

    @Parameters(index = "1", paramLabel = "NEW", description = "The new job file, or its folder; it must not be there.")
    private Path target;

    @Option(names = "--number", required = true, paramLabel = "NUMBER", description = "Number of the new job.")
    private String number;

    @Option(names = "--customer", required = true, paramLabel = "NAME", description = "The new customer.")
    private String customer;

    @Option(names = "--on", paramLabel = "DATE", description = "The date of the new bid (default: today).")
    private LocalDate on;

    @Option(
            names = "--take",
            split = ",",
            converter = EnumConverters.OfTake.class,
            paramLabel = "PART",
            description = "What is taken over: walls, items, terms (default: all). Conditions and levels never are.")
    private EnumSet<Copying.Take> take = EnumSet.allOf(Copying.Take.class);

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        return Copying.copy(job, target, number, customer, on == null ? LocalDate.now() : on, take);
    }
}
