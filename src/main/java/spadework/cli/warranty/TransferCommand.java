// SPDX-License-Identifier: Apache-2.0
package spadework.cli.warranty;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.TemplateOption;
import spadework.cli.option.Today;
import spadework.office.aftercare.TransferInput;
import spadework.office.aftercare.Transfers;
import spadework.office.reply.Reply;

/** Passes a warranty on. */
@Command(
        name = "transfer",
        description = "Pass a warranty to a later owner, if its terms allow it; the new certificate names the first.",
        footerHeading = "%nExample:%n",
        footer = "  spadework warranty transfer jobs/2026-014 --to \"Anselm Wren\" --on 2029-06-04 --sold 2029-05-20")
public final class TransferCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Option(names = "--to", required = true, paramLabel = "NAME", description = "The new owner; once for each of them.")
    private List<String> to;

    @Option(names = "--on", required = true, paramLabel = "DATE", description = "The day the notice came.")
    private LocalDate on;

    @Option(names = "--sold", paramLabel = "DATE", description = "The day of the sale.")
    private LocalDate sold;

    @Option(
            names = "--unsold",
            paramLabel = "HOW",
            description = "It passed by inheritance or divorce, in place of --sold: no transfer is used up.")
    private String withoutSale;

    @Option(names = "--waive", paramLabel = "WHY", description = "Take a late notice all the same, and why.")
    private String waive;

    @Option(names = "--certificate", paramLabel = "NUMBER", description = "Which one, where the job has several.")
    private String certificate;

    @Mixin
    private TemplateOption arguments;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        TransferInput asked = new TransferInput(
                Optional.ofNullable(certificate),
                to,
                on,
                Optional.ofNullable(sold),
                Optional.ofNullable(waive),
                Optional.ofNullable(withoutSale));
        return Transfers.transfer(job.path(), asked, arguments.templates(), Today.of(line().getCommandSpec()));
    }
}
