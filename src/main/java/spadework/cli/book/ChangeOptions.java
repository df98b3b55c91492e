// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.time.LocalDate;
import picocli.CommandLine.Option;

/** What goes with every change of the book. */
final class ChangeOptions {
    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day from which it holds, as 2026-08-01 (default: today).")
    private LocalDate on;

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; it stays in the book.")
    private String reason;

    LocalDate on() {
        return on == null ? LocalDate.now() : on;
    }

    String reason() {
        return reason;
    }
}
