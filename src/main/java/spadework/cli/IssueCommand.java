// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.cli.option.TemplateOption;
import spadework.cli.option.Today;
import spadework.cli.outcome.OutcomeReport;
import spadework.office.Office;
import spadework.office.agreement.Issuing;

/** Issues a proposal. */
@Command(
        name = "issue",
        description =
                "Issue the proposal with its specimen warranty: number, revision, what changed since the last one.",
        footerHeading = "%nExample:%n",
        footer = "  spadework issue jobs/2026-014")
final class IssueCommand implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Mixin
    private TemplateOption arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        return OutcomeReport.of(
                job, new Issuing(Office.with(arguments.templates()), Today.of(spec)).issue(job), spec.commandLine());
    }
}
