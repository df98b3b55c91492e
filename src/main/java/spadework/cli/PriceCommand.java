// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import spadework.cli.option.ExitCode;
import spadework.office.Bid;
import spadework.office.portfolio.WhatIf;

/** Prices a job. */
@Command(
        name = "price",
        description = "Price a job: sections and total, or with --json everything: quantities, lines and findings too.",
        footerHeading = "%nExample:%n",
        footer = "  spadework price jobs/2026-014 --json")
final class PriceCommand implements Callable<Integer> {
    @Mixin
    private JobOptions job;

    @Option(
            names = "--with",
            paramLabel = "WHAT=VALUE,…",
            description = "For your eyes only: the price with this otherwise, beside the price as it is; once for each"
                    + " column."
                    + " margin, markup, overhead, contingency, production, crew, soil, depth, access, protection."
                    + " crew=wall crew has that crew do everything, crew=dig crew:wall crew what the dig crew does.")
    private List<String> with = List.of();

    @Option(
            names = "--range",
            arity = "0..1",
            fallbackValue = "",
            paramLabel = "WHAT=VALUE,…",
            description = "For your eyes only: the range of the price where depth, production and soil are unsure"
                    + " (default: depth=3 in,production=15%%,soil=10%%).")
    private String range;

    @Option(
            names = "--runs",
            paramLabel = "N",
            description = "With --range: how often it is tried, 100 to 100000 (default: 1000).")
    private int runs = 1000;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "With --range: the same seed gives the same answer (default: 1).")
    private long seed = 1;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (runs < 100 || runs > 100_000) {
            throw new ParameterException(spec.commandLine(), "--runs " + runs + ": allowed are 100 to 100000");
        }
        boolean otherwise = !with.isEmpty() || range != null;
        return job.answer(job.office(), spec.commandLine(), otherwise ? this::compare : this::print);
    }

    private int compare(Bid bid) {
        List<spadework.office.reply.Reply> answers = new ArrayList<>();
        if (!with.isEmpty()) {
            answers.add(WhatIf.sideBySide(bid, with));
        }
        if (range != null) {
            answers.add(WhatIf.range(bid, range, runs, seed));
        }
        answers.forEach(described -> {
            described.out().forEach(spec.commandLine().getOut()::println);
            described.err().forEach(spec.commandLine().getErr()::println);
        });
        return answers.stream().allMatch(described -> described.done()) ? ExitCode.DONE : ExitCode.UNUSABLE;
    }

    private int print(Bid bid) {
        PrintWriter out = spec.commandLine().getOut();
        if (job.asJson()) {
            out.println(bid.priceListing());
        } else {
            bid.priceTable().forEach(out::println);
        }
        if (!bid.openStops().isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println("No papers yet: " + bid.openStops().size() + " stop(s) open, see: spadework check "
                            + job.path());
        }
        return ExitCode.DONE;
    }
}
