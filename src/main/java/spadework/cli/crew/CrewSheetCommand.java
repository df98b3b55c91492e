// SPDX-License-Identifier: Apache-2.0
package spadework.cli.crew;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.TemplateOption;
import spadework.cli.outcome.OutcomeReport;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.crew.CrewPapers;

/** Prints the crew's sheet and the blank log. */
@Command(
        name = "sheet",
        description = {
            "Print what the crew takes to the trench: what is done on which day, walls, hold points, the competent",
            "person's day sheet, and the log to fill in, also as a table (CSV); the same to read on a phone, and the",
            "scope of work that the codes at the hold points lead into. Nothing in it says what anything costs."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework crew sheet jobs/2026-014 --out documents")
final class CrewSheetCommand implements Callable<Integer> {
    @Mixin
    private JobParameter job;

    @Mixin
    DryRunOption dryRun;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day that the sheet carries (default: the day since which the work is agreed).")
    private LocalDate on;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Where the job's papers go.")
    private Path out;

    @Mixin
    private TemplateOption arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        CrewPapers papers = new CrewPapers(Office.with(arguments.templates()));
        Outcome done = on == null ? papers.print(job.path(), out) : papers.print(job.path(), on, out);
        return OutcomeReport.of(job.path(), done, spec.commandLine());
    }
}
