// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

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
import spadework.office.buying.PurchaseOrdering;

/** Prints purchase orders. */
@Command(
        name = "orders",
        description = {
            "Print what a job buys: a purchase order for each supplier of the price book, in whole packages,",
            "by the working day before it is needed. For your suppliers and you; nothing is sent."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework orders jobs/2026-014 --out documents")
final class OrdersCommand implements Callable<Integer> {
    @Mixin
    private JobParameter job;

    @Mixin
    DryRunOption dryRun;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day that the orders carry (default: the day since which the work is agreed).")
    private LocalDate on;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Where the job's papers go.")
    private Path out;

    @Mixin
    private TemplateOption arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PurchaseOrdering papers = new PurchaseOrdering(Office.with(arguments.templates()));
        Outcome done = on == null ? papers.orders(job.path(), out) : papers.orders(job.path(), on, out);
        return OutcomeReport.of(job.path(), done, spec.commandLine());
    }
}
