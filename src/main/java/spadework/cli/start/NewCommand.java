// SPDX-License-Identifier: Apache-2.0
package spadework.cli.start;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.option.AtTerminal;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.Today;
import spadework.office.reply.Reply;
import spadework.office.start.FirmStart;
import spadework.office.start.JobStart;

/** Start a firm or a job. */
@Command(
        name = "new",
        description = "Start a firm, or a job that prices at once.",
        subcommands = {NewCommand.Firm.class, NewCommand.Job.class},
        synopsisSubcommandLabel = "COMMAND",
        footerHeading = "%nExample:%n",
        footer = "  spadework new firm jobs")
public final class NewCommand {

    /** Starts a firm. */
    @Command(
            name = "firm",
            description = {
                "Start a firm: a folder with company.json, price-book.json and what an editor explains their keys by.",
                "What is not given as WHAT=VALUE is asked for, unless --no-questions is given."
            },
            footerHeading = "%nExample:%n",
            footer = "  spadework new firm jobs name=\"Example Waterproofing\" address/state=OH")
    static final class Firm extends ReplyCommand {
        @Parameters(
                index = "0",
                paramLabel = "DIR",
                description = "The folder of your firm, in which its jobs will lie.")
        private Path folder;

        @Parameters(
                index = "1..*",
                arity = "0..*",
                paramLabel = "WHAT=VALUE",
                description = "What company.json says, as phone=\"(614) 555-0143\" or insurance/until=2027-03-31.")
        private Map<String, String> values = new LinkedHashMap<>();

        @Option(names = "--no-questions", description = "Ask nothing; what is missing is told.")
        private boolean quiet;

        @Mixin
        DryRunOption dryRun;

        @Override
        protected Reply reply() throws IOException {
            Map<String, String> given = new LinkedHashMap<>(values);
            Optional<Console> console = AtTerminal.console().filter(there -> !quiet);
            console.ifPresent(asked ->
                    FirmStart.open(given).forEach((place, words) -> given.put(place, asked.readLine("%s: ", words))));
            return FirmStart.firm(folder, given);
        }
    }

    /** Starts a job. */
    @Command(
            name = "job",
            description = "Start a job that prices at once, with example measures to write over.",
            footerHeading = "%nExample:%n",
            footer = "  spadework new job jobs/2026-101 customer/names=\"Example Homeowner\" walls/A/length=\"42 ft\"")
    static final class Job extends ReplyCommand {
        @Parameters(
                index = "0",
                paramLabel = "JOB",
                description = "The new folder of the job; its name is the number of the job.")
        private Path job;

        @Parameters(
                index = "1..*",
                arity = "0..*",
                paramLabel = "WHAT=VALUE",
                description = "What job.json says, as site/address/city=Marlow.")
        private Map<String, String> values = new LinkedHashMap<>();

        @Mixin
        private JobEditOptions options;

        @Override
        protected Reply reply() throws IOException {
            return JobStart.job(options.office(), job, values, Today.of(line().getCommandSpec()));
        }
    }
}
