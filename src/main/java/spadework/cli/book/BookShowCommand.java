// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.ReplyCommand;
import spadework.office.reply.Reply;

/** Show all that the book says of an item, with its history. */
@Command(
        name = "show",
        description = "Show all that the book says of an item, with its history.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book show STONE-MACH --on 2026-06-30")
public final class BookShowCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Parameters(paramLabel = "CODE", description = "Code of the item.")
    private String code;

    @Option(names = "--on", paramLabel = "DATE", description = "As it stood at the end of that day.")
    private LocalDate on;

    @Override
    protected Reply reply() throws IOException {
        return on == null ? book.service().show(code) : book.service().show(code, on);
    }
}
