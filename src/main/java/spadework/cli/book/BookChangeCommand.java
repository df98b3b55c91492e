// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.office.reply.Reply;

/** Change values of an item. The old ones stay in its history. */
@Command(
        name = "change",
        description = "Change values of an item. The old ones stay in its history.",
        footerHeading = "%nExample:%n",
        footer = "  spadework book change STONE-MACH material/cost='$33.00' --on 2026-08-01 --reason \"August list\"")
public final class BookChangeCommand extends ReplyCommand {
    @Mixin
    private BookOption book;

    @Parameters(index = "0", paramLabel = "CODE", description = "Code of the item.")
    private String code;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "WHAT=VALUE",
            description = "What is written where, as material/cost=$33.00; WHAT= takes a value out.")
    private Map<String, String> values;

    @Mixin
    private ChangeOptions when;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        return book.service().change(code, values, when.on(), when.reason());
    }
}
