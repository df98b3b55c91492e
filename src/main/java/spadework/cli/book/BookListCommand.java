// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.cli.option.ReplyCommand;
import spadework.office.book.BookService;
import spadework.office.reply.Reply;

/** List the items of the price book with what they cost. */
@Command(
        name = "list",
        description = "List the items of the price book with what they cost.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book list --section wall")
public final class BookListCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Option(
            names = "--section",
            paramLabel = "NAME",
            description = "Only this section: wall, drain, roof water, ground or setup.")
    private String section;

    @Option(names = "--retired", description = "Those that were given up as well.")
    private boolean retired;

    @Option(names = "--on", paramLabel = "DATE", description = "As the book stood on that day.")
    private LocalDate on;

    @Override
    protected Reply reply() throws IOException {
        return book.service()
                .list(new BookService.Wanted(Optional.ofNullable(section), retired, Optional.ofNullable(on)));
    }
}
