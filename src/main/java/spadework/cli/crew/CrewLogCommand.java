// SPDX-License-Identifier: Apache-2.0
package spadework.cli.crew;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.TemplateOption;
import spadework.office.Office;
import spadework.office.crew.CrewPapers;
import spadework.office.reply.Reply;

/** Takes the crew's log into the job. */
@Command(
        name = "log",
        description = {
            "Take the log that the crew filled in into the job, as what was built; a blank says nothing, and a length",
            "or depth that was left blank is as agreed. Nothing is taken where one value of it is wrong."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework crew log jobs/2026-014 crew-log.csv")
final class CrewLogCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Parameters(index = "1", paramLabel = "LOG", description = "The filled log, a CSV file.")
    private Path log;

    @Mixin
    DryRunOption dryRun;

    @Mixin
    private TemplateOption arguments;

    @Override
    protected Reply reply() throws IOException {
        return new CrewPapers(Office.with(arguments.templates())).take(job.path(), log);
    }
}
