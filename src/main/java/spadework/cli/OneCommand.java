// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import spadework.cli.option.Program;

/**
 * The program with the one command that a command line names. To read what all the others take costs an eighth of the
 * time of a whole set of papers, cold.
 */
final class OneCommand extends Program {
    private OneCommand(LocalDate today) {
        super(today);
    }

    /** What parses such a command line; empty where it does not begin with the name of a command. */
    static Optional<CommandLine> of(LocalDate today, String... arguments) {
        return Arrays.stream(arguments)
                .limit(1)
                .flatMap(name -> Arrays.stream(
                                Spadework.class.getAnnotation(Command.class).subcommands())
                        .filter(type -> type.getAnnotation(Command.class).name().equals(name)))
                .findFirst()
                .map(type -> new CommandLine(new OneCommand(today)).addSubcommand(type));
    }
}
