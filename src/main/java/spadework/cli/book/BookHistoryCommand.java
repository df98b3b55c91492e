// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.ReplyCommand;
import spadework.office.portfolio.BidsService;
import spadework.office.reply.Reply;

/** Where an item was used. */
@Command(
        name = "history",
        description =
                "Every use of an item in the bids of a folder tree: job, date, quantity, price, and what became of it.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book history STONE-MACH jobs")
public final class BookHistoryCommand extends ReplyCommand {
    @Parameters(index = "0", paramLabel = "CODE", description = "Code of the item.")
    private String code;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "A folder with job folders in it.")
    private Path folder;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Override
    protected Reply reply() throws IOException {
        return BidsService.history(code, folder, json);
    }
}
