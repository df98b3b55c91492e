// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import picocli.CommandLine.Command;
import spadework.cli.account.InvoiceCommand;
import spadework.cli.account.LateNoticeCommand;
import spadework.cli.account.PaymentCommand;
import spadework.cli.account.ReleaseCommand;
import spadework.cli.account.StatementCommand;

/** Money after the contract is signed. */
@Command(
        name = "account",
        description = "Getting paid once the contract is signed: bills, receipts, statements, late notices, releases.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            InvoiceCommand.class,
            PaymentCommand.class,
            StatementCommand.class,
            LateNoticeCommand.class,
            ReleaseCommand.class
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework account invoice jobs/2026-014 --payment 2 --on 2026-08-24")
final class AccountCommand {}
