// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ExitCode;
import spadework.cli.option.TemplateOption;
import spadework.cli.outcome.OutcomeReport;
import spadework.finding.Fault;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;

/** Prints the papers of one job or of many. One bad job does not stop the others. */
@Command(
        name = "documents",
        description =
                "Print proposal, scope of work, warranty and cost sheet of each job, and its contract's papers, as PDF"
                        + " and XLSX.",
        footerHeading = "%nExample:%n",
        footer = "  spadework documents jobs/2026-014 --out documents --only proposal,scope-of-work")
final class DocumentsCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private List<Path> jobs;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "documents",
            description = "Where the papers go, in a folder for each job (default: ${DEFAULT-VALUE}).")
    private Path out;

    @Option(
            names = "--only",
            split = ",",
            paramLabel = "PAPER",
            description = "Only these papers: proposal, scope-of-work, contract, warranty, cost-sheet, change-order,"
                    + " completion. A contract needs a job that says how it is signed.")
    private List<String> only = List.of();

    @Mixin
    private TemplateOption arguments;

    @Mixin
    DryRunOption dryRun;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Set<PaperKind> papers = papers();
        Office office = Office.with(arguments.templates());
        Map<Path, Fault> taken = Office.takenNumbers(jobs);
        boolean refused = false;
        try (ProgressBar bar = jobs.size() > 1 ? bar() : null) {
            for (Path job : jobs) {
                Outcome outcome = office.documents(job, out, papers, taken);
                refused |= OutcomeReport.of(job, outcome, "nothing was printed", spec.commandLine()) != ExitCode.DONE;
                if (bar != null) {
                    bar.step();
                }
            }
        }
        return refused ? ExitCode.REFUSED : ExitCode.DONE;
    }

    private Set<PaperKind> papers() {
        Set<PaperKind> chosen = EnumSet.noneOf(PaperKind.class);
        for (String name : only) {
            chosen.add(PaperKind.find(name)
                    .orElseThrow(() ->
                            new ParameterException(spec.commandLine(), "--only " + name + ": allowed are " + names())));
        }
        return chosen.isEmpty() ? EnumSet.allOf(PaperKind.class) : chosen;
    }

    private static String names() {
        return Arrays.stream(PaperKind.values()).map(PaperKind::file).collect(Collectors.joining(", "));
    }

    private ProgressBar bar() {
        return new ProgressBarBuilder()
                .setTaskName("Jobs")
                .setInitialMax(jobs.size())
                .setUpdateIntervalMillis(200)
                .build();
    }
}
