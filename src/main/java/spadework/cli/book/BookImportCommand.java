// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.office.book.BookSheets;
import spadework.office.reply.Reply;

/** Take over what a workbook or a list says otherwise than the book, and tell every changed cell. */
@Command(
        name = "import",
        description = "Take over what a workbook or a list says otherwise than the book, and tell every changed cell.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book import prices.xlsx --on 2026-09-01 --reason \"September round\" --dry-run")
public final class BookImportCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Parameters(paramLabel = "FILE", description = "An exported workbook; with --map a supplier's CSV or XLSX.")
    private Path file;

    @Option(
            names = "--map",
            paramLabel = "FILE",
            description = "How a supplier's list is read: its columns and our items, as JSON.")
    private Path map;

    @Mixin
    private ChangeOptions when;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        BookSheets.Saving saving = new BookSheets.Saving(when.on(), when.reason(), true);
        return new BookSheets(book.service()).take(new BookSheets.PriceFile(file, Optional.ofNullable(map)), saving);
    }
}
