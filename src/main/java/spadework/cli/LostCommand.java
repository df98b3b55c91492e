// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.Today;
import spadework.cli.outcome.OutcomeReport;
import spadework.office.agreement.LostProposal;

/** Write down that the homeowner did not take the proposal. */
@Command(
        name = "lost",
        description = "Write down that the homeowner did not take the proposal.",
        footerHeading = "%nExample:%n",
        footer = "  spadework lost jobs/2026-014 --on 2026-09-20 --reason \"took a lower bid\"")
final class LostCommand implements Callable<Integer> {
    @Mixin
    private JobParameter job;

    @Mixin
    DryRunOption dryRun;

    @Option(
            names = "--on",
            required = true,
            paramLabel = "DATE",
            description = "The day on which it was said, as 2026-09-20.")
    private LocalDate on;

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; for you only.")
    private String reason;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        return OutcomeReport.of(
                job.path(), LostProposal.lose(job.path(), on, reason, Today.of(spec)), spec.commandLine());
    }
}
