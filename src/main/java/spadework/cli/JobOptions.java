// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.nio.file.Path;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.cli.option.ExitCode;
import spadework.cli.option.JobParameter;
import spadework.cli.option.TemplateOption;
import spadework.finding.Fault;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Refusal;

/** What the commands on a single job take, and how a job that cannot be read is told. */
final class JobOptions {
    @Mixin
    private JobParameter job;

    @Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    @Mixin
    private TemplateOption arguments;

    Path path() {
        return job.path();
    }

    boolean asJson() {
        return json;
    }

    Office office() {
        return Office.with(arguments.templates());
    }

    /** Hands a bid to the command; a refused job is told and answered with its exit code. */
    int answer(Office office, CommandLine line, Function<Bid, Integer> command) {
        BidResult answer = office.bid(job.path());
        if (answer instanceof Refusal refusal) {
            if (json) {
                line.getOut().println(refusal.listing());
            } else {
                refusal.faults().stream().map(Fault::text).forEach(line.getErr()::println);
            }
            return ExitCode.REFUSED;
        }
        return command.apply((Bid) answer);
    }
}
