// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The office in which a command is taken. */
public final class OfficeOption {
    private static final String NAME = "--office";

    @Option(
            names = NAME,
            paramLabel = "FILE",
            scope = ScopeType.INHERIT,
            description =
                    "The file that names the home of a shared office; a JOB or FOLDER is then one of that office.")
    @SuppressWarnings("UnusedVariable") // asked for by name
    private Path office;

    /** The file as given to any command of the line. */
    public static Optional<Path> of(CommandSpec command) {
        return Optional.ofNullable(command.root().findOption(NAME)).map(option -> option.getValue());
    }
}
