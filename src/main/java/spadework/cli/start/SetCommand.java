// SPDX-License-Identifier: Apache-2.0
package spadework.cli.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.TemplateOption;
import spadework.office.Office;
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
    @Parameters(index = "0", paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "WHAT=VALUE",
            description = "What the job file says where, as walls/A/depth/start=\"4 ft 8 in\".")
    private Map<String, String> values = new LinkedHashMap<>();

    @Mixin
    private TemplateOption templates;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        return new JobEdit(Office.with(templates.templates())).set(job, values);
    }
}
