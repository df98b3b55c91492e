// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.wording.Language;
import spadework.wording.Wording;

/** What is wrong with a value is said in the window's language, with the figures and names of the check. */
class FaultPhrasesTest {
    private static final Path KNOWN = Path.of("src/test/resources/spadework/intake");
    private static final ResourceBundle SPANISH =
            Wording.translated("spadework.form.faults", Language.of("es")).orElseThrow();

    /** Nothing but values: figures, units, codes, and words of the price book, which are called so in its file. */
    private static final Pattern VALUES =
            Pattern.compile("[\\d.,\\- ]+(sf)?|ft, in, mil, .*|soil dug, bank .*|bridge, side not dug, wall last"
                    + "|permit, engineer, .*|foot of wall, .*|default|yearBuilt|\"[^\"]*\"");

    @BeforeEach
    void spanish() {
        Messages.speak(Language.of("es"));
    }

    @AfterEach
    void english() {
        Messages.speak(Language.ENGLISH);
    }

    @Test
    void figuresAndNamesOfTheCheckStandInIt() {
        assertThat(FaultWords.of(fault(
                        "\"14\"",
                        "a length with its unit (ft, in, yd), above 0 ft, at most 20 ft",
                        "write the unit, as \"14 ft\"")))
                .isEqualTo("\"14\" no cabe aquí. Lo que cabe: un largo con su unidad (ft, in, yd), más de 0 ft, a lo"
                        + " más 20 ft. Escriba la unidad, como \"14 ft\".");
        assertThat(FaultWords.of(fault("\"dayligth\"", "daylight, sump, approved storm", "write \"daylight\"")))
                .isEqualTo("\"dayligth\" no cabe aquí. Lo que cabe: cielo abierto, pozo de bombeo, drenaje pluvial"
                        + " aprobado. Escriba \"daylight\".");
    }

    @Test
    void whatNobodyTranslatedIsSaidInEnglish() {
        assertThat(FaultWords.of(fault("a riddle", "an answer", "think"))).contains("a riddle", "an answer", "Think");
    }

    /** Every fault of a job and of a price book that is tested word for word, as far as the window says it. */
    @Test
    void everyKnownFaultIsSaid() throws IOException {
        FaultPhrases phrases = new FaultPhrases(SPANISH);
        Set<String> english = new TreeSet<>();
        int said = 0;
        for (String file : List.of("faults-of-a-job.txt", "faults-of-a-price-book.txt")) {
            for (String words : parts(file)) {
                said++;
                if (phrases.of(words).isEmpty() && !VALUES.matcher(words).matches()) {
                    english.add(words);
                }
            }
        }
        assertThat(said).isGreaterThan(300);
        assertThat(english).isEmpty();
    }

    /** Places stand in both, and no phrase is left in English. */
    @Test
    void phrasesHaveThePlacesOfTheEnglishOnes() {
        assertThat(SPANISH.keySet()).allSatisfy(key -> {
            assertThat(SPANISH.getString(key)).isNotEqualTo(key);
            assertThat(places(key)).containsAll(places(SPANISH.getString(key)));
        });
    }

    private static Set<String> places(String text) {
        Set<String> places = new TreeSet<>();
        Matcher found = Pattern.compile("\\{\\d}").matcher(text);
        while (found.find()) {
            places.add(found.group());
        }
        return places;
    }

    private static List<String> parts(String file) throws IOException {
        return Files.readAllLines(KNOWN.resolve(file)).stream()
                .flatMap(line -> Stream.of("found ", "allowed ", "fix ")
                        .filter(line::startsWith)
                        .map(kind -> line.substring(kind.length()))
                        .map(words -> line.startsWith("found ")
                                ? (FaultWords.isMissing(fault(words, "", "")) ? "" : words)
                                : FaultWords.plain(words)))
                .filter(words -> !words.isEmpty())
                .toList();
    }

    private static Fault fault(String found, String allowed, String fix) {
        return new Fault(new Place("job.json", 1, 1, "/walls/0/length"), found, allowed, fix);
    }
}
