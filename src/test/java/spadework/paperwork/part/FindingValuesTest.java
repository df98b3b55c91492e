// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.ground.BodyKind;
import spadework.job.LimitKind;
import spadework.job.Protection;
import spadework.job.Texture;
import spadework.paperwork.PaperWords;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** What findings carry beside figures is said in the language of the paper. */
class FindingValuesTest {
    private static final Language SPANISH = Language.of("es");
    private static final PaperWords WORDS =
            new PaperWords(Templates.bundled().words("words/terms.properties", SPANISH), SPANISH, Map.of());

    private static Finding finding(String value) {
        return new Finding("any", Severity.MUST, "A", Map.of("value", value, "at", "wall A"), "29 CFR 1926.652");
    }

    @ParameterizedTest
    @CsvSource({
        "property line,       el límite de la propiedad",
        "start,               comienzo",
        "built 1960,          fue construida en 1960",
        "under 0.05 gpm,      menos de 0.05 gpm",
        "loamy sand,          arena franca",
        "7 ft 4 in,           7 ft 4 in",
        "gas line by wall 2,  gas line by wall 2"
    })
    void aWordIsTranslatedAndAFigureAndWhatSomebodyTypedStay(String english, String spanish) {
        assertThat(FindingValues.in(WORDS, finding(english)).values()).containsEntry("value", spanish);
    }

    @Test
    void placesAreNamedByTheirKinds() {
        Map<String, List<String>> bodies = new LinkedHashMap<>();
        bodies.put("wall", List.of("A", "B"));
        bodies.put("discharge pipe", List.of("S1"));
        Finding said = FindingValues.in(WORDS, finding("6 ft").at(bodies));
        assertThat(said.values()).containsEntry("at", "las paredes A y B y el tubo de descarga S1");
        assertThat(said.bodies()).isEqualTo(bodies);
    }

    @Test
    void inEnglishNothingChanges() {
        Finding english = finding("property line").at(Map.of("wall", List.of("A")));
        assertThat(FindingValues.in(new PaperWords(Map.of()), english)).isEqualTo(english);
    }

    @Test
    void everyWordThatARuleMayPutInHasItsTranslation() {
        assertThat(Stream.of(LimitKind.values(), Protection.values(), Texture.values())
                        .flatMap(Arrays::stream)
                        .map(constant ->
                                constant.name().toLowerCase(Locale.ROOT).replace('_', ' ')))
                .allSatisfy(word -> assertThat(
                                FindingValues.in(WORDS, finding(word)).values())
                        .doesNotContainEntry("value", word));
        assertThat(BodyKind.values()).allSatisfy(kind -> {
            String name = kind == BodyKind.DISCHARGE ? "discharge-pipe" : PaperWords.key(kind.name());
            assertThat(WORDS.find("body." + name + ".one", "labels", "A")).isPresent();
            assertThat(WORDS.find("body." + name + ".several", "labels", "A y B"))
                    .isPresent();
        });
    }
}
