// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import picocli.CommandLine.Command;
import spadework.cli.warranty.CardCommand;
import spadework.cli.warranty.ClaimCommand;
import spadework.cli.warranty.TransferCommand;
import spadework.cli.warranty.WarrantyListCommand;
import spadework.cli.warranty.WarrantyShowCommand;

/** Warranties after the job. */
@Command(
        name = "warranty",
        description = "Warranties after the job: in force, claims, transfers, maintenance. From the register alone.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            WarrantyListCommand.class,
            WarrantyShowCommand.class,
            TransferCommand.class,
            ClaimCommand.class,
            CardCommand.class
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework warranty list jobs --months 6")
final class WarrantyCommand {}
