// SPDX-License-Identifier: Apache-2.0
package spadework.cli.register;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import spadework.cli.option.ReplyCommand;
import spadework.office.records.RegisterService;
import spadework.office.reply.Reply;

/** Examines registers. */
@Command(
        name = "check",
        description = {
            "Hold every line to the one before it and every issued document to its line.",
            "It finds changes and losses; it does not tell whether a document is right or lawful."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework register check jobs/2026-014 jobs/2026-015",
            "  spadework register check jobs/2026-014 --paper proposal-as-mailed.pdf"
        })
public final class RegisterCheckCommand extends ReplyCommand {
    @Parameters(arity = "1..*", paramLabel = "JOB", description = "A job folder, or the job file in it.")
    private List<Path> jobs;

    @Option(
            names = "--paper",
            paramLabel = "PDF",
            description =
                    "A PDF as the homeowner got it: finds whether the register of the one job named was cut back or"
                            + " written anew after it. Once for each.")
    private List<Path> papers = List.of();

    @Override
    protected Reply reply() throws IOException {
        if (papers.isEmpty()) {
            return RegisterService.check(jobs);
        }
        if (jobs.size() != 1) {
            throw new ParameterException(line(), "--paper: name the one job that the paper belongs to");
        }
        return RegisterService.check(jobs.get(0), papers);
    }
}
