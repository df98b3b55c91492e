// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import spadework.cli.option.ReplyCommand;
import spadework.office.reply.Reply;

/** Find items by words in code, names, notes and source. */
@Command(
        name = "find",
        description = "Find items by words in code, names, notes and source.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book find washed stone")
public final class BookFindCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Parameters(arity = "1..*", paramLabel = "WORD", description = "All of them must occur.")
    private List<String> words;

    @Override
    protected Reply reply() throws IOException {
        return book.service().find(words);
    }
}
