// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.cli.option.TemplateOption;
import spadework.cli.option.Today;
import spadework.cli.outcome.OutcomeReport;
import spadework.office.Office;
import spadework.office.agreement.Closing;

/** Closes a job. */
@Command(
        name = "close",
        description = "Close a job: issue its warranty from what was built, or say what is still open.",
        footerHeading = "%nExample:%n",
        footer = "  spadework close jobs/2026-014 --on 2026-10-02")
final class CloseCommand implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Option(
            names = "--on",
            required = true,
            paramLabel = "DATE",
            description = "The day on which it is closed, as 2026-10-02.")
    private LocalDate on;

    @Option(
            names = "--completed",
            paramLabel = "DATE",
            description = "The day from which the warranty runs (default: the last day of work).")
    private Optional<LocalDate> completed = Optional.empty();

    @Option(names = "--waive", paramLabel = "WHY", description = "Issue it although a balance is open, and why.")
    private Optional<String> waived = Optional.empty();

    @Mixin
    private TemplateOption arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Closing closing = new Closing(Office.with(arguments.templates()), Today.of(spec));
        return OutcomeReport.of(job, closing.close(job, new Closing.Asked(on, completed, waived)), spec.commandLine());
    }
}
