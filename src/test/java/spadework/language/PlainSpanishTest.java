// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spadework.wording.Language;
import spadework.wording.Sentence;

/** An outside judge reads the translated sentences: LanguageTool in Spanish. */
class PlainSpanishTest {
    private static final Language SPANISH = Language.of("es");

    /**
     * What is typed as it stands and is no Spanish: flags, files, keys of a file and their values, keys in quotes,
     * commands, words that a flag or a file takes, each before its Spanish in parentheses, and names of arguments.
     */
    private static final Pattern TYPED = Pattern.compile(String.join(
            "|",
            "--[a-z-]+",
            "\\b[\\w-]+\\.(json|pdf|xlsx|jpg|eml)\\b",
            "(\\w+/)*\\w+=(\"[^\"]*\"|\\S*)",
            "\\b\\w+/\\w+\\b",
            "\"[\\w.-]*\"",
            "\"[^\"]*\"(?= \\()",
            "(?<=comando )[a-z]+( check)?",
            "\\b[a-z-]+( [a-z]+){0,2}(?= \\([a-zñáéíóú ]+\\))",
            "\\b(JOB|FOLDER|FILE|CALCULATOR|WHAT|VALUE|SPADEWORK_\\w+)\\b",
            "\\$\\{[A-Z-]+}"));

    @Test
    void everyTranslatedSentenceReadsAsSpanish() throws IOException {
        SpanishJudge judge = new SpanishJudge();
        List<String> faults = new ArrayList<>();
        int read = 0;
        for (Path file : bundles()) {
            Properties texts = new Properties();
            texts.load(Files.newBufferedReader(file));
            for (String key : texts.stringPropertyNames()) {
                read++;
                judge.faults(plain(texts.getProperty(key))).forEach(fault -> faults.add(key + ": " + fault));
            }
        }
        assertThat(read).isGreaterThan(100);
        assertThat(faults).isEmpty();
    }

    /** As it would be printed, with a figure in each place. */
    private static String plain(String text) {
        String counted = text.contains(", plural,") ? Sentence.of(text, SPANISH, 12, 12, 12, 12, 12, 12) : text;
        return TYPED.matcher(counted.replace("%n", "\n").replace("%%", "%"))
                .replaceAll("12")
                .replaceAll("(?<=\\p{L})\\{\\w+}", "")
                .replaceAll("\\{\\w+}", "12")
                .replaceAll("</?strong>|☐ ", "")
                .replaceAll(" {2,}", " ");
    }

    private static List<Path> bundles() throws IOException {
        List<Path> bundles = new ArrayList<>();
        for (Path folder : List.of(Path.of("src/main/resources/spadework"), Path.of("templates"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(file -> file.toString().endsWith("_es.properties"))
                        .sorted()
                        .forEach(bundles::add);
            }
        }
        return bundles;
    }
}
