// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No sentence that a user or a homeowner reads stands in code: it lies in {@code templates}, in the words of the window
 * or in the words beside a package. Commands say their own help, and readers of files name the limits of the check.
 */
class SentencesTest {
    private static final Path CODE = Path.of("src/main/java/spadework");
    private static final Path WORDS = Path.of("src/main/resources/spadework");

    /** Each with its reason: {@code File.java: how it begins | why it may stay}. */
    private static final Path EXPLAINED = Path.of("src/test/resources/spadework/language/sentences-in-code.txt");

    private static final Pattern TOKEN = Pattern.compile(
            "\"\"\"(?s:.*?)\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"|'(?:\\\\.|[^'\\\\])'|//[^\\n]*|/\\*(?s:.*?)\\*/"
                    + "|[A-Za-z_]\\w*|\\S");
    private static final Pattern WORD = Pattern.compile("[A-Za-z'’]+");
    private static final Pattern BEGINS = Pattern.compile("([A-Z][a-z'’]*,? [a-z]|%s,? ).*", Pattern.DOTALL);
    private static final Pattern ENDS = Pattern.compile("([A-Z]|%s).*[.:?!] ?", Pattern.DOTALL);
    private static final Pattern FOR_PROGRAMMERS = Pattern.compile("(Exception|Error) \\($");
    private static final Pattern KEY =
            Pattern.compile("(?:WORDS(?:\\s*\\.in\\([\\w.()]+\\))?|\\bsaid)\\s*\\.get\\(\\s*\"([^\"]+)\"(\\s*\\+)?");

    @Test
    void noSentenceStandsInCode() throws IOException {
        Map<String, String> explained = explained();
        List<String> found = new ArrayList<>();
        Set<String> used = new TreeSet<>();
        for (Path file : sources(CODE)) {
            for (String sentence : sentences(Files.readString(file))) {
                String place = file.getFileName() + ": " + sentence;
                explained.keySet().stream().filter(place::startsWith).forEach(used::add);
                if (explained.keySet().stream().noneMatch(place::startsWith)) {
                    found.add(place);
                }
            }
        }
        assertThat(found)
                .as("put these into words.properties beside the package")
                .isEmpty();
        assertThat(used).as("still in code").isEqualTo(explained.keySet());
    }

    @Test
    void aSentenceIsFoundHoweverItIsPutTogether() {
        assertThat(sentences("add(\"The price held until \" + day + \". Issue it again.\");"))
                .containsExactly("The price held until … . Issue it again.");
        assertThat(sentences("add(\"%s, %s, leads all the way to %s.\".formatted(a, b, c));"))
                .containsExactly("%s, %s, leads all the way to %s.");
        assertThat(sentences("throw new IllegalStateException(\"The words lack a key.\"); // The next line is code."))
                .isEmpty();
        assertThat(sentences("put(\"footing drain\", \"IRC R405.1\");")).isEmpty();
    }

    /** Both ways: a key that nobody asks for is dead, one that is not there breaks when it is asked for. */
    @Test
    void everyKeyBesideAPackageIsAskedForThere() throws IOException {
        int seen = 0;
        for (Path words : bundles()) {
            Path code = CODE.resolve(WORDS.relativize(words.getParent()));
            Set<String> asked = new TreeSet<>();
            Set<String> begun = new TreeSet<>();
            for (Path file : sources(code)) {
                for (MatchResult key :
                        KEY.matcher(Files.readString(file)).results().toList()) {
                    if (file.getParent().equals(code)) {
                        (key.group(2) == null ? asked : begun).add(key.group(1));
                    }
                }
            }
            List<String> keys = keys(words);
            assertThat(keys).as(words.toString()).doesNotHaveDuplicates().containsAll(asked);
            assertThat(keys)
                    .as(words.toString())
                    .allMatch(key -> asked.contains(key) || begun.stream().anyMatch(key::startsWith));
            assertThat(begun)
                    .as(words.toString())
                    .allMatch(start -> keys.stream().anyMatch(key -> key.startsWith(start)));
            seen += keys.size();
        }
        assertThat(seen).isGreaterThan(90);
    }

    /** String expressions that read as sentences; what is put in between literals is an ellipsis. */
    private static List<String> sentences(String code) {
        List<String> tokens = TOKEN.matcher(code)
                .results()
                .map(MatchResult::group)
                .filter(token -> !token.startsWith("//") && !token.startsWith("/*"))
                .toList();
        List<String> sentences = new ArrayList<>();
        for (int at = 0; at < tokens.size(); at++) {
            if (tokens.get(at).startsWith("\"")) {
                int from = at;
                StringBuilder text = new StringBuilder();
                int depth = 0;
                boolean put = false;
                for (; at < tokens.size() && !(depth == 0 && ends(tokens.get(at))); at++) {
                    String token = tokens.get(at);
                    depth += "([{".contains(token) ? 1 : ")]}".contains(token) ? -1 : 0;
                    if (depth == 0 && token.startsWith("\"")) {
                        text.append(put ? "… " : "")
                                .append(token.replace("\"\"\"", "").replaceAll("^\"|\"$", ""));
                        put = false;
                    } else if (!token.equals("+") && !isFormatted(token)) {
                        put = text.length() > 0 && !text.toString().contains("%s");
                    }
                }
                String before = String.join(" ", tokens.subList(Math.max(0, from - 3), from));
                if (isSentence(text.toString())
                        && !FOR_PROGRAMMERS.matcher(before).find()) {
                    sentences.add(text.toString());
                }
            }
        }
        return sentences;
    }

    private static boolean ends(String token) {
        return ",;)}:?{&|=!<>".contains(token);
    }

    private static boolean isFormatted(String token) {
        return token.equals(".") || token.equals("formatted");
    }

    private static boolean isSentence(String text) {
        return WORD.matcher(text.replace("%s", "")).results().count() >= 4
                && (text.startsWith("%s")
                        ? ENDS.matcher(text).matches()
                        : BEGINS.matcher(text).matches() || ENDS.matcher(text).matches());
    }

    private static Map<String, String> explained() throws IOException {
        Map<String, String> explained = new LinkedHashMap<>();
        for (String line : Files.readAllLines(EXPLAINED)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] parts = line.split(" \\| ", 2);
                assertThat(parts).as(line).hasSize(2);
                explained.put(parts[0], parts[1]);
            }
        }
        return explained;
    }

    private static List<String> keys(Path words) throws IOException {
        try (Stream<String> lines = Files.lines(words)) {
            return lines.map(Pattern.compile("^([a-z0-9.-]+)=")::matcher)
                    .filter(Matcher::find)
                    .map(match -> match.group(1))
                    .collect(Collectors.toList());
        }
    }

    private static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(WORDS)) {
            return files.filter(file -> file.endsWith("words.properties"))
                    .filter(file -> !file.startsWith(WORDS.resolve("form")) && !file.startsWith(WORDS.resolve("store")))
                    .sorted()
                    .toList();
        }
    }

    private static List<Path> sources(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.startsWith(CODE.resolve("cli")) && !file.startsWith(CODE.resolve("intake")))
                    .sorted()
                    .toList();
        }
    }
}
