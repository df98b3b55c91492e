// SPDX-License-Identifier: Apache-2.0
package spadework.cli.warranty;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.TemplateOption;
import spadework.office.aftercare.WarrantyService;
import spadework.office.reply.Reply;

/** What the homeowner does and when. */
@Command(
        name = "card",
        description = "The homeowner's maintenance card: the certificate's duties, season by season to the last day.",
        footerHeading = "%nExample:%n",
        footer = "  spadework warranty card jobs/2026-014 --out documents")
public final class CardCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Option(names = "--out", paramLabel = "DIR", description = "Print it there, as PDF and XLSX.")
    private Path out;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "Only from this day on; printed papers carry it (default: today).")
    private LocalDate on;

    @Mixin
    private TemplateOption arguments;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        if (out != null) {
            return WarrantyService.printCards(
                    job.path(), out, on == null ? LocalDate.now() : on, arguments.templates());
        }
        return on == null ? WarrantyService.card(job.path(), json) : WarrantyService.card(job.path(), on, json);
    }
}
