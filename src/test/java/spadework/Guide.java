// SPDX-License-Identifier: Apache-2.0
package spadework;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A document in Markdown at the top of the project, taken apart. */
record Guide(String text) {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");
    private static final Pattern CODE = Pattern.compile("`([^`\\n]+)`");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)]+)\\)");

    static Guide readme() {
        return new Guide(read(Path.of("README.md")));
    }

    static Guide reference() {
        return new Guide(read(Path.of("src/reference/README.md")));
    }

    static Guide developers() {
        return new Guide(read(Path.of("DEVELOPERS.md")));
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What stands under a heading of the second level. */
    Guide under(String heading) {
        return new Guide(Arrays.stream(text.split("(?m)^## "))
                .filter(part -> part.startsWith(heading + "\n"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no heading ## " + heading)));
    }

    /** The cells of the first table's rows, without its head. */
    List<List<String>> rows() {
        return text.lines()
                .dropWhile(line -> !line.startsWith("|"))
                .takeWhile(line -> line.startsWith("|"))
                .skip(2)
                .map(line -> Arrays.stream(line.substring(1).split("\\|", -1))
                        .map(String::strip)
                        .toList())
                .toList();
    }

    /** The fenced blocks in one language. */
    List<String> blocks(String language) {
        return BLOCK.matcher(text)
                .results()
                .filter(block -> block.group(1).equals(language))
                .map(block -> block.group(2))
                .toList();
    }

    /** What stands between backticks in running text and tables. */
    List<String> code() {
        return matches(CODE, BLOCK.matcher(text).replaceAll("")).toList();
    }

    List<String> links() {
        return matches(LINK, text).toList();
    }

    private static Stream<String> matches(Pattern pattern, String text) {
        List<MatchResult> found = pattern.matcher(text).results().toList();
        return found.stream().map(match -> match.group(1));
    }
}
