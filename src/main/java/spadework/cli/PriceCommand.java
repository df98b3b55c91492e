package spadework.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import spadework.office.Bid;

/** Prices a job. */
@Command(
        name = "price",
        description = "Price a job: sections and total, or with --json everything: quantities, lines and findings too.",
        footerHeading = "%nExample:%n",
        footer = "  spadework price jobs/2026-014 --json")
final class PriceCommand implements Callable<Integer> {
    @Mixin
    private OneJob job;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return job.answer(job.office(), spec.commandLine(), this::print);
    }

    private int print(Bid bid) {
        PrintWriter out = spec.commandLine().getOut();
        if (job.asJson()) {
            out.println(bid.priceListing());
        } else {
            bid.priceTable().forEach(out::println);
        }
        if (!bid.openStops().isEmpty()) {
            spec.commandLine().getErr().println(
                    "No papers yet: " + bid.openStops().size() + " stop(s) open, see: spadework check " + job.path());
        }
        return Spadework.DONE;
    }
}
