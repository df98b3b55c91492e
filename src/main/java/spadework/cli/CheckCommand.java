// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spadework.cli.option.ExitCode;
import spadework.cli.option.TerminalLines;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.office.Bid;
import spadework.office.Office;

/** Checks a job and prints what was found. */
@Command(
        name = "check",
        description = "Check a job: drainage, trench safety, structure, outlets, deposit. Stops come first.",
        footerHeading = "%nExample:%n",
        footer = "  spadework check jobs/2026-014")
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private JobOptions job;

    @Option(
            names = "--only",
            split = ",",
            converter = EnumConverters.OfSeverity.class,
            paramLabel = "GRADE",
            description = "Only these: stop, must, advise (default: all). The counts are of all.")
    private EnumSet<Severity> only = EnumSet.allOf(Severity.class);

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Office office = job.office();
        return job.answer(office, spec.commandLine(), bid -> print(office, bid));
    }

    private int print(Office office, Bid bid) {
        PrintWriter out = spec.commandLine().getOut();
        if (job.asJson()) {
            out.println(bid.checkListing());
        } else {
            TerminalLines lines = TerminalLines.here();
            for (Finding finding : bid.findings()) {
                if (only.contains(finding.severity())) {
                    String answered = bid.isAnsweredFor(finding) ? " (accepted in the job)" : "";
                    lines.wrapped(finding.severity() + answered + " " + office.described(finding))
                            .forEach(out::println);
                }
            }
            if (only.size() == Severity.values().length) {
                bid.choices().forEach(out::println);
            }
            out.println(counts(bid));
            lines.wrapped(office.deference()).forEach(out::println);
        }
        return bid.openStops().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
    }

    private static String counts(Bid bid) {
        long accepted = bid.findings().stream().filter(bid::isAnsweredFor).count();
        String counted = Arrays.stream(Severity.values())
                .map(severity -> bid.findings().stream()
                                .filter(finding -> finding.severity() == severity)
                                .count()
                        + " " + severity)
                .collect(Collectors.joining(", "));
        return accepted == 0 ? counted : counted + "; accepted in the job: " + accepted;
    }
}
