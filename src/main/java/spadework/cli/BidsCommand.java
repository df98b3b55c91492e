// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.bids.BidStatus;
import spadework.cli.option.ReplyCommand;
import spadework.office.portfolio.BidsService;
import spadework.office.reply.Reply;

/** List all bids of a folder tree: where each stands, total, margin, valid until, age. For your eyes only. */
@Command(
        name = "bids",
        description =
                "List all bids of a folder tree: where each stands, total, margin, valid until, age. For your eyes"
                        + " only.",
        footerHeading = "%nExample:%n",
        footer = "  spadework bids jobs --status issued --on 2026-10-01 --find sump")
final class BidsCommand extends ReplyCommand {
    @Parameters(paramLabel = "FOLDER", description = "A folder with job folders in it.")
    private Path folder;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day for age and validity, as 2026-10-01 (default: today).")
    private LocalDate on;

    @Option(
            names = "--status",
            converter = EnumConverters.OfStanding.class,
            paramLabel = "WORD",
            description = "Only these: draft, issued, accepted, closed or lost.")
    private BidStatus standing;

    @Option(
            names = "--find",
            paramLabel = "WORD",
            description = "Only bids in which the word occurs: titles, customers, items, notes. Once for each word.")
    private List<String> words = List.of();

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Override
    protected Reply reply() throws IOException {
        BidsService.Wanted wanted = new BidsService.Wanted(Optional.ofNullable(standing), words);
        return BidsService.list(folder, on == null ? LocalDate.now() : on, wanted, json);
    }
}
