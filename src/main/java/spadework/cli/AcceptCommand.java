// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.cli.option.TemplateOption;
import spadework.cli.option.Today;
import spadework.cli.outcome.OutcomeReport;
import spadework.office.Office;
import spadework.office.agreement.Accepting;

/** Records the homeowner's yes. */
@Command(
        name = "accept",
        description = "Record that the homeowner accepted the proposal issued last, with the options taken.",
        footerHeading = "%nExample:%n",
        footer = "  spadework accept jobs/2026-014 --on 2026-08-20 --by \"Ida Wrenfield\" --take OP1 --signature"
                + " signed.pdf")
final class AcceptCommand implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Option(
            names = "--take",
            split = ",",
            paramLabel = "OPTION",
            description = "Labels of the options taken; the others are declined.")
    private List<String> taken = List.of();

    @Mixin
    private SignatureOptions signed;

    @Mixin
    private TemplateOption arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Accepting accepting = new Accepting(Office.with(arguments.templates()), Today.of(spec));
        return OutcomeReport.of(job, accepting.accept(job, taken, signed.yes()), spec.commandLine());
    }
}
