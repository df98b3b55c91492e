// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.office.reply.Reply;

/** Give an item up: old bids still read it, new ones no longer choose it. */
@Command(
        name = "retire",
        description = "Give an item up: old bids still read it, new ones no longer choose it.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book retire STONE-HAND --on 2026-09-01 --reason \"never used\"")
public final class BookRetireCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Parameters(paramLabel = "CODE", description = "Code of the item.")
    private String code;

    @Mixin
    private ChangeOptions when;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        return book.service().retire(code, when.on(), when.reason());
    }
}
