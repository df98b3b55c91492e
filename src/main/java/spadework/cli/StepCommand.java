// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.TemplateOption;
import spadework.cli.option.Today;
import spadework.cli.outcome.OutcomeReport;
import spadework.office.Office;
import spadework.office.Outcome;

/** A step of one job, from the proposal to the close: it takes job, templates and day, and tells what came of it. */
abstract class StepCommand implements Callable<Integer> {
    @Mixin
    private JobParameter job;

    @Mixin
    private TemplateOption arguments;

    @Mixin
    DryRunOption dryRun;

    @Spec
    private CommandSpec spec;

    /** Takes the step. */
    abstract Outcome step(Path job, Office office, LocalDate today) throws IOException;

    @Override
    public final Integer call() throws IOException {
        Outcome outcome = step(job.path(), Office.with(arguments.templates()), Today.of(spec));
        return OutcomeReport.of(job.path(), outcome, spec.commandLine());
    }
}
