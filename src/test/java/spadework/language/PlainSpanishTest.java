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
import spadework.wording.Language;
import spadework.wording.Sentence;

/** An outside judge reads the translated sentences: LanguageTool in Spanish. */
class PlainSpanishTest {
    private static final Language SPANISH = Language.of("es");

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
        return counted.replaceAll("(?<=\\p{L})\\{\\w+}", "")
                .replaceAll("\\{\\w+}", "12")
                .replaceAll("</?strong>|☐ ", "");
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
