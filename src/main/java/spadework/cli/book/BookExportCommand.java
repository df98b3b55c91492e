// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.office.book.BookSheets;
import spadework.office.reply.Reply;

/** Write the price book as a workbook that is protected against mistakes. */
@Command(
        name = "export",
        description = "Write the price book as a workbook that is protected against mistakes.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book export prices.xlsx")
public final class BookExportCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Parameters(paramLabel = "FILE", description = "The workbook to write.")
    private Path target;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        return new BookSheets(book.service()).export(target);
    }
}
