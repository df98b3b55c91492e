// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.TemplateOption;
import spadework.feedback.RateRule;
import spadework.office.book.BookService;
import spadework.office.portfolio.FeedbackService;
import spadework.office.reply.Reply;

/** What closed jobs really took, and what rates follow. */
@Command(
        name = "feedback",
        description =
                "What closed jobs really took against the estimate, split into quantity, production and price error,"
                        + " and the rates that follow. For your eyes only.",
        footerHeading = "%nExample:%n",
        footer = "  spadework feedback jobs --accept DIG-MACH,STONE-MACH --on 2026-12-01")
final class FeedbackCommand extends ReplyCommand {
    @Parameters(paramLabel = "FOLDER", description = "A job, or a folder with job folders in it.")
    private Path tree;

    @Option(names = "--book", paramLabel = "FILE", description = "The price book (default: the nearest to FOLDER).")
    private Path book;

    @Option(
            names = "--rule",
            converter = EnumConverters.OfRule.class,
            paramLabel = "WORD",
            description = "median: of the last 5 jobs, at least 3 (default). step: a quarter of the way for each job.")
    private RateRule rule = RateRule.MEDIAN;

    @Option(names = "--out", paramLabel = "DIR", description = "Write it as feedback.pdf and feedback.xlsx.")
    private Path out;

    @Option(
            names = "--accept",
            split = ",",
            paramLabel = "CODE",
            description = "Write the suggested rates of these items into the book.")
    private List<String> accept = List.of();

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day of the paper, or from which the rates hold (default: today).")
    private LocalDate on;

    @Mixin
    private TemplateOption arguments;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        LocalDate day = on == null ? LocalDate.now() : on;
        FeedbackService service =
                new FeedbackService(tree, book == null ? BookService.near(tree) : BookService.at(book), rule);
        if (!accept.isEmpty()) {
            return service.accept(accept, day);
        }
        return out == null ? service.tell() : service.print(out, day, arguments.templates());
    }
}
