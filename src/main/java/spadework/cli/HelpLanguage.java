// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import picocli.CommandLine;
import spadework.office.files.JobsFolder;
import spadework.office.files.OfficeLanguage;
import spadework.wording.Wording;

/**
 * Tells the help of commands in the language of the office. English stands beside the commands; another language is a
 * bundle with the keys of picocli, {@code help_es.properties}.
 */
final class HelpLanguage {
    private static final String BUNDLE = "spadework.cli.help";
    private static final List<String> FLAGS = List.of("--help", "-h");

    private HelpLanguage() {}

    /** Whether a command line asks for help and nothing else is done; one without arguments is told all commands. */
    static boolean isAskedFor(String... arguments) {
        return arguments.length == 0 || Stream.of(arguments).anyMatch(FLAGS::contains);
    }

    /**
     * Has a command, and all below it, tell its help as the company reads: that of a job or folder which is named, of
     * the folder one is in, or of the folder where jobs usually live.
     */
    static void speak(CommandLine line, String... arguments) {
        Path[] places = Stream.of(
                        Stream.of(arguments).flatMap(argument -> path(argument).stream()),
                        Stream.of(Path.of("")),
                        Stream.of(JobsFolder.usual()))
                .flatMap(named -> named)
                .toArray(Path[]::new);
        Wording.translated(BUNDLE, OfficeLanguage.near(places)).ifPresent(texts -> tell(line, texts));
    }

    private static void tell(CommandLine line, ResourceBundle texts) {
        line.setResourceBundle(texts);
        line.getSubcommands().values().forEach(command -> tell(command, texts));
    }

    private static Optional<Path> path(String argument) {
        try {
            return Optional.of(Path.of(argument)).filter(Files::exists);
        } catch (InvalidPathException other) {
            return Optional.empty();
        }
    }
}
