// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.TemplateOption;
import spadework.cli.option.Today;
import spadework.office.book.BookService;
import spadework.office.portfolio.SeasonService;
import spadework.office.reply.Reply;

/** Reports on a season. */
@Command(
        name = "season",
        description = {
            "What a season brought, for your eyes only: won and lost, days sold and worked, what items took,",
            "warranty claims by cause, money outstanding. With charts, as PDF and XLSX."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework season jobs --from 2026-04-01 --until 2026-11-30 --out documents")
final class SeasonCommand extends ReplyCommand {
    @Parameters(paramLabel = "FOLDER", description = "A folder with job folders in it.")
    private Path tree;

    @Option(names = "--from", required = true, paramLabel = "DATE", description = "The first day of proposals.")
    private LocalDate from;

    @Option(names = "--until", required = true, paramLabel = "DATE", description = "The last day of proposals.")
    private LocalDate until;

    @Option(names = "--on", paramLabel = "DATE", description = "The day that the report carries (default: today).")
    private LocalDate on;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Where season.pdf and season.xlsx go.")
    private Path out;

    @Mixin
    private TemplateOption arguments;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        LocalDate day = on == null ? Today.of(line().getCommandSpec()) : on;
        return new SeasonService(tree, BookService.near(tree))
                .print(new SeasonService.Span(from, until), day, out, arguments.templates());
    }
}
