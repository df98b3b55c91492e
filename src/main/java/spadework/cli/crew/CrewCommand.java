// SPDX-License-Identifier: Apache-2.0
package spadework.cli.crew;

import picocli.CommandLine.Command;

/** The crew's papers. */
@Command(
        name = "crew",
        description = "The crew's papers: a sheet for the trench and a log that comes back filled in.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {CrewSheetCommand.class, CrewLogCommand.class},
        footerHeading = "%nExample:%n",
        footer = "  spadework crew sheet jobs/2026-014 --out documents")
public final class CrewCommand {}
