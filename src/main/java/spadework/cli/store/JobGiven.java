// SPDX-License-Identifier: Apache-2.0
package spadework.cli.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The one job that a command line names, whether the command takes one or several. */
final class JobGiven {
    private static final String LABEL = "JOB";

    private final PositionalParamSpec parameter;
    private final Path path;

    private JobGiven(PositionalParamSpec parameter, Path path) {
        this.parameter = parameter;
        this.path = path;
    }

    /** The job given to a command; empty where it takes none, or several were given. */
    static Optional<JobGiven> to(CommandSpec command) {
        return command.positionalParameters().stream()
                .filter(one -> one.paramLabel().startsWith(LABEL))
                .flatMap(one -> path(one.getValue()).map(path -> new JobGiven(one, path)).stream())
                .findFirst();
    }

    private static Optional<Path> path(Object value) {
        if (value instanceof List<?> all) {
            return all.size() == 1 && all.get(0) instanceof Path only ? Optional.of(only) : Optional.empty();
        }
        return value instanceof Path path ? Optional.of(path) : Optional.empty();
    }

    Path path() {
        return path;
    }

    /** Has the command take another folder for the job. */
    void set(Path folder) {
        parameter.setValue(parameter.getValue() instanceof List<?> ? List.of(folder) : folder);
    }
}
