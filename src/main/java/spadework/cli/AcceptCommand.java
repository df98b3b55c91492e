// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.agreement.Accepting;

/** Records the homeowner's yes. */
@Command(
        name = "accept",
        description = "Record that the homeowner accepted the proposal issued last, with the options taken.",
        footerHeading = "%nExample:%n",
        footer = "  spadework accept jobs/2026-014 --on 2026-08-20 --by \"Ida Wrenfield\" --take OP1 --signature"
                + " signed.pdf")
final class AcceptCommand extends StepCommand {
    @Option(
            names = "--take",
            split = ",",
            paramLabel = "OPTION",
            description = "Labels of the options taken; the others are declined.")
    private List<String> taken = List.of();

    @Mixin
    private SignatureOptions signed;

    @Override
    Outcome step(Path job, Office office, LocalDate today) throws IOException {
        return new Accepting(office, today).accept(job, taken, signed.yes());
    }
}
