// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import picocli.CommandLine.Command;
import spadework.cli.book.BookAddCommand;
import spadework.cli.book.BookChangeCommand;
import spadework.cli.book.BookExportCommand;
import spadework.cli.book.BookFindCommand;
import spadework.cli.book.BookHistoryCommand;
import spadework.cli.book.BookImportCommand;
import spadework.cli.book.BookListCommand;
import spadework.cli.book.BookRetireCommand;
import spadework.cli.book.BookShowCommand;

/** Work on the price book. */
@Command(
        name = "book",
        description = "Work on the price book: look things up, change them with date and reason. Nothing old is lost.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            BookListCommand.class,
            BookFindCommand.class,
            BookShowCommand.class,
            BookAddCommand.class,
            BookChangeCommand.class,
            BookRetireCommand.class,
            BookHistoryCommand.class,
            BookExportCommand.class,
            BookImportCommand.class
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework book change STONE-MACH material/cost='$33.00' --on 2026-08-01 --reason"
                + " \"quarry's August list\"")
final class BookCommand {}
