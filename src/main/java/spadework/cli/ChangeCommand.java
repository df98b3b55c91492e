// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.agreement.Deciding;

/** Records what became of a change order. */
@Command(
        name = "change",
        description = "Record that a change order of the job was signed by both sides, or declined.",
        footerHeading = "%nExample:%n",
        footer = "  spadework change jobs/2026-014 1 --accepted --on 2026-09-15 --by \"Ida Wrenfield\" --signature"
                + " change-1.pdf")
final class ChangeCommand extends StepCommand {
    @Parameters(index = "1", paramLabel = "NUMBER", description = "Number of the change order in the job.")
    private int number;

    @ArgGroup(multiplicity = "1")
    private Decision decision;

    @Mixin
    private SignatureOptions signed;

    /** One of the two. */
    static final class Decision {
        @Option(names = "--accepted", required = true, description = "Both sides signed it.")
        private boolean accepted;

        @Option(names = "--declined", required = true, description = "The homeowner declined it.")
        @SuppressWarnings("UnusedVariable") // the other half of the pair; picocli asks for one of the two
        private boolean declined;
    }

    @Override
    Outcome step(Path job, Office office, LocalDate today) throws IOException {
        return new Deciding(office, today).decide(job, number, decision.accepted, signed.yes());
    }
}
