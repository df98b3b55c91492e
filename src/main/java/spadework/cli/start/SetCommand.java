// SPDX-License-Identifier: Apache-2.0
package spadework.cli.start;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.office.reply.Reply;
import spadework.office.start.JobEdit;

/** Change values of a job. */
@Command(
        name = "set",
        description = {
            "Change values of a job, each by its keys and the labels of its rows; WHAT= takes a value out.",
            "Nothing is written that gives the file a fault."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework set jobs/2026-101 walls/A/length=\"38 ft 6 in\" site/soil/texture=\"silty clay\"")
public final class SetCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "WHAT=VALUE",
            description = "What the job file says where, as walls/A/depth/start=\"4 ft 8 in\".")
    private Map<String, String> values = new LinkedHashMap<>();

    @Mixin
    private JobEditOptions options;

    @Override
    protected Reply reply() throws IOException {
        return new JobEdit(options.office()).set(job.path(), values);
    }
}
