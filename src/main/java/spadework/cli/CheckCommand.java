// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import spadework.cli.option.ExitCode;
import spadework.finding.Finding;
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
            for (Finding finding : bid.findings()) {
                String answered = bid.isAnsweredFor(finding) ? " (accepted in the job)" : "";
                out.println(finding.severity() + answered + " " + office.told(finding));
            }
            bid.choices().forEach(out::println);
            out.println(office.deference());
        }
        return bid.openStops().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
    }
}
