// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.agreement.Issuing;

/** Issues a proposal. */
@Command(
        name = "issue",
        description =
                "Issue the proposal with its specimen warranty: number, revision, what changed since the last one.",
        footerHeading = "%nExample:%n",
        footer = "  spadework issue jobs/2026-014")
final class IssueCommand extends StepCommand {
    @Override
    Outcome step(Path job, Office office, LocalDate today) throws IOException {
        return new Issuing(office, today).issue(job);
    }
}
