// SPDX-License-Identifier: Apache-2.0
package spadework.cli.account;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.billing.Statements;

/** Writes that a payment is late. */
@Command(
        name = "late-notice",
        description = "Write to the owner that a payment is late. It asks for no interest, as the contract has it.",
        footerHeading = "%nExample:%n",
        footer = "  spadework account late-notice jobs/2026-014 --on 2026-09-20")
public final class LateNoticeCommand extends AccountStep {
    @Override
    Outcome take(Office office, Path job, LocalDate on, LocalDate today) throws IOException {
        return new Statements(office, today).lateNotice(job, on);
    }
}
