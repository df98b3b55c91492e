// SPDX-License-Identifier: Apache-2.0
package spadework.cli.warranty;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import spadework.cli.option.ReplyCommand;
import spadework.office.aftercare.WarrantyService;
import spadework.office.reply.Reply;

/** What is in force. */
@Command(
        name = "list",
        description = "What is in force on a day, by certificate and part, with its last day.",
        footerHeading = "%nExample:%n",
        footer = "  spadework warranty list jobs --on 2028-01-15 --months 6")
public final class WarrantyListCommand extends ReplyCommand {
    @Parameters(paramLabel = "FOLDER", description = "A job folder, or a folder with job folders in it.")
    private Path folder;

    @Option(names = "--on", paramLabel = "DATE", description = "The day, as 2028-01-15 (default: today).")
    private LocalDate on;

    @Option(names = "--months", paramLabel = "N", description = "Only what ends within so many months.")
    private Integer months;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Override
    protected Reply reply() throws IOException {
        if (months != null && (months < 0 || months > 1200)) {
            throw new ParameterException(line(), "--months " + months + ": allowed are 0 to 1200");
        }
        LocalDate day = on == null ? LocalDate.now() : on;
        return months == null
                ? WarrantyService.list(folder, day, json)
                : WarrantyService.list(folder, day, months, json);
    }
}
