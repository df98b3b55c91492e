// SPDX-License-Identifier: Apache-2.0
package spadework.cli.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What a command line names of an office: one job, a folder of jobs, or no more than the book that it works on. */
final class PathGiven {
    private static final String JOB = "JOB";
    private static final String FOLDER = "FOLDER";
    /** The new job of a command that makes one from another. */
    private static final String NEW = "NEW";

    private static final String JOB_FILE = "job.json";
    private static final String BOOK = "--book";
    private static final String BOOK_FILE = "price-book.json";

    private final Kind kind;
    private final List<ArgSpec> arguments;

    /** What is named. */
    enum Kind {
        NONE,
        JOB,
        FOLDER,
        BOOK
    }

    private PathGiven(Kind kind, List<ArgSpec> arguments) {
        this.kind = kind;
        this.arguments = arguments;
    }

    /** What a command was given; {@link Kind#NONE} where it takes none of them, or several jobs were given. */
    static PathGiven to(CommandSpec command) {
        List<ArgSpec> jobs = labeled(command, JOB);
        if (!jobs.isEmpty()) {
            return jobs.stream().allMatch(one -> path(one.getValue()).isPresent())
                    ? new PathGiven(Kind.JOB, with(jobs, labeled(command, NEW)))
                    : new PathGiven(Kind.NONE, List.of());
        }
        List<ArgSpec> folders = labeled(command, FOLDER);
        if (!folders.isEmpty()) {
            return new PathGiven(Kind.FOLDER, folders);
        }
        ArgSpec book = command.findOption(BOOK);
        return book == null ? new PathGiven(Kind.NONE, List.of()) : new PathGiven(Kind.BOOK, List.of(book));
    }

    private static List<ArgSpec> with(List<ArgSpec> jobs, List<ArgSpec> more) {
        List<ArgSpec> all = new ArrayList<>(jobs);
        all.addAll(more);
        return all;
    }

    private static List<ArgSpec> labeled(CommandSpec command, String label) {
        List<ArgSpec> found = new ArrayList<>();
        for (PositionalParamSpec one : command.positionalParameters()) {
            if (one.paramLabel().startsWith(label)) {
                found.add(one);
            }
        }
        return found;
    }

    private static Optional<Path> path(Object value) {
        if (value instanceof List<?> all) {
            return all.size() == 1 && all.get(0) instanceof Path only ? Optional.of(only) : Optional.empty();
        }
        return value instanceof Path path ? Optional.of(path) : Optional.empty();
    }

    Kind kind() {
        return kind;
    }

    /** What was named, below the office; nothing but the office itself for its book. */
    Path path() {
        return path(arguments.get(0).getValue()).orElse(Path.of(""));
    }

    /** The second job, where the command makes one. */
    Optional<String> more() {
        return arguments.size() < 2
                ? Optional.empty()
                : path(arguments.get(1).getValue()).map(PathGiven::name);
    }

    /** The folder of the office that was named, itself or by its job file. */
    String name() {
        return name(path());
    }

    private static String name(Path path) {
        Path folder = path.endsWith(JOB_FILE) && path.getNameCount() > 1 ? path.getParent() : path;
        return folder.normalize().toString().replace('\\', '/');
    }

    /** Has the command take what lies below a folder. */
    void in(Path root) {
        for (ArgSpec argument : arguments) {
            Path file = kind == Kind.BOOK
                    ? root.resolve(path(argument.getValue()).orElse(Path.of(BOOK_FILE)))
                    : root.resolve(path(argument.getValue()).orElseThrow()).normalize();
            argument.setValue(argument.getValue() instanceof List<?> ? List.of(file) : file);
        }
    }
}
