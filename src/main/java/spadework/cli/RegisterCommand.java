// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import picocli.CommandLine.Command;
import spadework.cli.register.RegisterCheckCommand;
import spadework.cli.register.RegisterListCommand;

/** The register of what was issued for a job. */
@Command(
        name = "register",
        description = "The register of what was issued, agreed and claimed for a job.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {RegisterCheckCommand.class, RegisterListCommand.class},
        footerHeading = "%nExample:%n",
        footer = "  spadework register check jobs/2026-014")
final class RegisterCommand {}
