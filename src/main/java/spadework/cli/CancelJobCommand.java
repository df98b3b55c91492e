// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.agreement.Canceling;

/** Records a notice of cancellation. */
@Command(
        name = "cancel",
        description = {
            "Record that a buyer canceled the contract: the day to pay back, the acknowledgment to send,",
            "and no step on the contract after that."
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework cancel jobs/2026-014 --received 2026-08-24 --sent 2026-08-21 --by \"Ida Wrenfield\"")
final class CancelJobCommand extends StepCommand {
    @Option(
            names = "--received",
            required = true,
            paramLabel = "DATE",
            description = "The day on which the notice came, as 2026-08-24.")
    private LocalDate received;

    @Option(
            names = "--sent",
            paramLabel = "DATE",
            description = "The day on which it was mailed or handed over (default: the day it came).")
    private Optional<LocalDate> sent = Optional.empty();

    @Option(names = "--by", paramLabel = "NAME", description = "Who gave notice; once for each person.")
    private List<String> by = List.of();

    @Option(names = "--notice", paramLabel = "FILE", description = "A scan of the notice, in the job's folder.")
    private Optional<String> notice = Optional.empty();

    @Option(
            names = "--release",
            paramLabel = "WHY",
            description = "Let the buyer go although the right to cancel had ended, and why.")
    private Optional<String> release = Optional.empty();

    @Override
    Outcome step(Path job, Office office, LocalDate today) throws IOException {
        return new Canceling(office, today).cancel(job, new Canceling.NoticeInput(by, sent, received, notice, release));
    }
}
