// SPDX-License-Identifier: Apache-2.0
package spadework.cli.account;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.TemplateOption;
import spadework.cli.option.Today;
import spadework.cli.outcome.OutcomeReport;
import spadework.office.Office;
import spadework.office.Outcome;

/** What the commands of an account have in common: a job and a day. */
abstract class AccountStep implements Callable<Integer> {
    @Mixin
    private JobParameter job;

    @Mixin
    DryRunOption dryRun;

    @Option(names = "--on", required = true, paramLabel = "DATE", description = "The day, as 2026-08-24.")
    private LocalDate on;

    @Mixin
    private TemplateOption arguments;

    @Spec
    private CommandSpec spec;

    abstract Outcome take(Office office, Path job, LocalDate on, LocalDate today) throws IOException;

    @Override
    public final Integer call() throws IOException {
        Outcome outcome = take(Office.with(arguments.templates()), job.path(), on, Today.of(spec));
        return OutcomeReport.of(job.path(), outcome, spec.commandLine());
    }
}
