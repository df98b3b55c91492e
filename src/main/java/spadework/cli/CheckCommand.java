package spadework.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.finding.Finding;
import spadework.office.Answer;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.Refusal;

/** Checks a job and prints what was found. */
@Command(
        name = "check",
        description = "Check a job: drainage, trench safety, structure, outlets, deposit. Stops come first.",
        footerHeading = "%nExample:%n",
        footer = "  spadework check jobs/2026-014")
final class CheckCommand implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Option(names = "--json", description = "Print the findings as JSON.")
    private boolean json;

    @Mixin
    private JobArguments arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Office office = Office.with(arguments.templates());
        Answer answer = office.bid(job);
        if (answer instanceof Refusal refusal) {
            return Refusals.print(refusal, json, spec.commandLine());
        }
        Bid bid = (Bid) answer;
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(bid.checkListing());
        } else {
            for (Finding finding : bid.findings()) {
                String answered = bid.isAnsweredFor(finding) ? " (accepted in the job)" : "";
                out.println(finding.severity() + answered + " " + office.told(finding));
            }
            out.println(office.deference());
        }
        return bid.openStops().isEmpty() ? Spadework.DONE : Spadework.REFUSED;
    }
}
