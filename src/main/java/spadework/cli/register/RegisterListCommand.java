// SPDX-License-Identifier: Apache-2.0
package spadework.cli.register;

import java.io.IOException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.office.records.RegisterService;
import spadework.office.reply.Reply;

/** Prints a register. */
@Command(
        name = "list",
        description = "Print the register of a job, a line for each event.",
        footerHeading = "%nExample:%n",
        footer = "  spadework register list jobs/2026-014 --json")
public final class RegisterListCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Override
    protected Reply reply() throws IOException {
        return RegisterService.list(job.path(), json);
    }
}
