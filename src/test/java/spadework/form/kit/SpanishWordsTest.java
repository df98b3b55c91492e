// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import spadework.draft.FileSchema;
import spadework.wording.Language;

/** The window in Spanish: no English is left in it, and it counts as Spanish does. */
class SpanishWordsTest {
    private static final Path WORDS = Path.of("src/main/resources/spadework/form");

    /** What is the same in both: signs and values alone, states of that name, and the words that are named. */
    private static final Pattern SAME = Pattern.compile("(\\{\\d}|[^\\p{L}])*");

    private static final Set<String> SAME_WORDS = Set.of(
            "first.title",
            "window.title",
            "letter.file",
            "choice.false",
            "field.usual",
            "whatif.unsure.usual",
            "plan.north",
            "slide.inches",
            "working.total",
            "working.material",
            "reprice.total",
            "library.bids.total",
            "cause.MATERIAL");

    @BeforeEach
    void spanish() {
        Messages.speak(Language.of("es"));
    }

    @AfterEach
    void english() {
        Messages.speak(Language.ENGLISH);
    }

    @Test
    void noEnglishIsLeft() throws IOException {
        Properties english = read("words.properties");
        Properties spanish = read("words_es.properties");
        Set<String> left = new TreeSet<>();
        for (String key : english.stringPropertyNames()) {
            String said = spanish.getProperty(key);
            if (said.equals(english.getProperty(key)) && !SAME.matcher(said).matches() && !isState(key)) {
                left.add(key);
            }
        }
        assertThat(left).isEqualTo(new TreeSet<>(SAME_WORDS));
    }

    private static boolean isState(String key) {
        return key.matches("choice\\.[A-Z]{2}");
    }

    @Test
    void whatEnglishCountsWithAnSIsCountedAsSpanishDoes() throws IOException {
        Properties english = read("words.properties");
        List<String> counted = english.stringPropertyNames().stream()
                .filter(key -> english.getProperty(key).contains("(s)"))
                .toList();
        assertThat(counted)
                .hasSizeGreaterThan(15)
                .allSatisfy(key ->
                        assertThat(read("words_es.properties").getProperty(key)).contains(", plural,"));
        assertThat(Messages.of("summary.days", 1)).isEqualTo("1 día de trabajo");
        assertThat(Messages.of("summary.days", 8)).isEqualTo("8 días de trabajo");
        assertThat(Messages.of("bids.found", 1, "trabajos"))
                .isEqualTo("1 oferta en trabajos. Enter o un doble clic abre una; F5 las lee otra vez.");
    }

    /** A word of the job's format is shown in Spanish; what stands in the file stays. */
    @Test
    void everyChoiceOfAJobIsCalledSomething() {
        Set<String> bare = new TreeSet<>();
        FileSchema.job().places().stream()
                .flatMap(place -> FileSchema.job().at(place).orElseThrow().choices().stream())
                .filter(word -> !word.matches("[A-Z]"))
                .filter(word -> Messages.or("choice." + word, "").isEmpty())
                .forEach(bare::add);
        assertThat(bare).isEmpty();
    }

    @Test
    void fieldsAreCalledByTheirSpanishNames() {
        assertThat(Messages.field("/walls/0/depth/start")).isEqualTo("Hondo, inicio");
        assertThat(Messages.column("/water/mains/0/trench/width")).contains("Ancho");
        assertThat(Messages.named("/options/0/adds/walls/0/length")).contains("Largo");
    }

    private static Properties read(String file) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(WORDS.resolve(file))) {
            texts.load(reader);
        }
        return texts;
    }
}
