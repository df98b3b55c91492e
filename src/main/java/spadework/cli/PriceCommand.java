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
import spadework.office.Answer;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.Refusal;

/** Prices a job. */
@Command(
        name = "price",
        description = "Price a job: sections and total, or everything as JSON.",
        footerHeading = "%nExample:%n",
        footer = "  spadework price jobs/2026-014 --json")
final class PriceCommand implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Option(names = "--json", description = "Print total, sections, quantities, lines and findings as JSON.")
    private boolean json;

    @Mixin
    private JobArguments arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Answer answer = Office.with(arguments.templates()).bid(job);
        if (answer instanceof Refusal refusal) {
            return Refusals.print(refusal, json, spec.commandLine());
        }
        Bid bid = (Bid) answer;
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(bid.priceListing());
        } else {
            bid.priceTable().forEach(out::println);
        }
        if (!bid.openStops().isEmpty()) {
            spec.commandLine().getErr().println(
                    "No papers yet: " + bid.openStops().size() + " stop(s) open, see: spadework check " + job);
        }
        return Spadework.DONE;
    }
}
