// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.office.reply.Reply;

/** Add an item, a new one or one that starts as another. */
@Command(
        name = "add",
        description = "Add an item, a new one or one that starts as another.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book add STONE-HAND2 --like STONE-HAND labor/perHour=\"1.5 cy\" --reason"
                + " \"narrow gates\"")
public final class BookAddCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Parameters(index = "0", paramLabel = "CODE", description = "Code of the new item.")
    private String code;

    @Parameters(
            index = "1..*",
            paramLabel = "WHAT=VALUE",
            description = "What it says, as section=wall or material/cost=$33.00.")
    private Map<String, String> values = new LinkedHashMap<>();

    @Option(names = "--like", paramLabel = "CODE", description = "The item that it starts from.")
    private String like;

    @Mixin
    private ChangeOptions when;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        return like == null
                ? book.service().add(code, values, when.on(), when.reason())
                : book.service().addLike(like, code, values, when.on(), when.reason());
    }
}
