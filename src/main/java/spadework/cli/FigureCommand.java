// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import picocli.CommandLine.Command;
import spadework.cli.figure.CancelCommand;
import spadework.cli.figure.CoatingCommand;
import spadework.cli.figure.DepositCommand;
import spadework.cli.figure.EarthCommand;
import spadework.cli.figure.FrictionCommand;
import spadework.cli.figure.PipeCommand;
import spadework.cli.figure.RoofCommand;
import spadework.cli.figure.RootsCommand;
import spadework.cli.figure.RunoffCommand;
import spadework.cli.figure.StoneCommand;
import spadework.cli.figure.SumpCommand;
import spadework.cli.figure.TaxCommand;
import spadework.cli.figure.TermCommand;
import spadework.cli.figure.TrenchCommand;

/** Single figures, worked out as a job works them out. */
@Command(
        name = "figure",
        description = {
            "Work out one thing on the spot, with its working, by the very formulas that a job uses.",
            "Every flag carries its unit: \"8 in\", 0.5%%, \"60 gpm\". See figure CALCULATOR --help."
        },
        synopsisSubcommandLabel = "CALCULATOR",
        subcommands = {
            PipeCommand.class,
            RoofCommand.class,
            RunoffCommand.class,
            TrenchCommand.class,
            StoneCommand.class,
            CoatingCommand.class,
            EarthCommand.class,
            SumpCommand.class,
            FrictionCommand.class,
            RootsCommand.class,
            CancelCommand.class,
            DepositCommand.class,
            TermCommand.class,
            TaxCommand.class
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework figure coating --area \"100 sf\" --wet \"60 mil\"")
final class FigureCommand {}
