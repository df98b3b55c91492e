// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.languagetool.JLanguageTool;
import org.languagetool.Languages;
import org.languagetool.rules.RuleMatch;

/** An outside judge reads the translated sentences: LanguageTool in Spanish. */
class PlainSpanishTest {
    private static final Path EXPLAINED = Path.of("src/test/resources/spadework/language");

    @Test
    void everyTranslatedSentenceReadsAsSpanish() throws IOException {
        JLanguageTool judge = new JLanguageTool(Languages.getLanguageForShortCode("es"));
        judge.disableRules(lines("rules-set-aside-es.txt"));
        List<String> words = lines("trade-words-es.txt");
        List<String> faults = new ArrayList<>();
        int read = 0;
        for (Path file : bundles()) {
            Properties texts = new Properties();
            texts.load(Files.newBufferedReader(file));
            for (String key : texts.stringPropertyNames()) {
                read++;
                String text = texts.getProperty(key).replaceAll("\\{\\d}", "12").replace("☐ ", "");
                for (RuleMatch match : judge.check(text)) {
                    String said = text.substring(match.getFromPos(), match.getToPos());
                    if (!words.contains(said)) {
                        faults.add(key + ": " + said + " (" + match.getRule().getId() + ") in: " + text);
                    }
                }
            }
        }
        assertThat(read).isGreaterThan(100);
        assertThat(faults).isEmpty();
    }

    private static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources/spadework"))) {
            return files.filter(file -> file.toString().endsWith("_es.properties"))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> lines(String file) throws IOException {
        return Files.readAllLines(EXPLAINED.resolve(file)).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.replaceAll("\\s*#.*", ""))
                .filter(line -> !line.isBlank())
                .toList();
    }
}
