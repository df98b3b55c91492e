// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.FilmThickness;
import spadework.measure.UnreadableMeasure;

/** What the default coatings promise, and the sizes of the default pipes. */
class DefaultFilmsAndPipesTest {

    /** IRC R406.2 (F-19), the newer list: what may be called waterproofing, in mils dry (1/8 in is 125). */
    @ParameterizedTest(name = "{0} is at least {2} mil of {1}")
    @CsvSource(delimiter = '|', textBlock = """
            COAT-RUB    | liquid synthetic rubber  | 60
            COAT-ASP    | polymer modified asphalt | 40
            COAT-CEM    | flexible polymer cement  | 60
            PARGE-FIBER | fiber reinforced cement  | 125
            """)
    void filmReachesTheCodesList(String code, String generic, double least) throws UnreadableMeasure {
        JsonNode film = Shipped.items().get(code).get("film");

        assertThat(film.get("generic").asText()).isEqualTo(generic);
        assertThat(FilmThickness.parse(film.get("dryFilm").asText()).mils()).isGreaterThanOrEqualTo(least);
    }

    @Test
    void everyCoatAndSheetSaysWhatItIs() {
        Stream.of(Measure.COAT, Measure.SHEET, Measure.PARGE)
                .flatMap(measure -> Shipped.following(measure).stream())
                .forEach(code -> assertThat(Shipped.words(TreatmentKind.class))
                        .as(code)
                        .contains(Shipped.items()
                                .get(code)
                                .path("film")
                                .path("generic")
                                .asText()));
    }

    /** Sizes from the pipe's standard; a stick is what the material is bought in. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # perforated and solid PVC, corrugated coil (ASTM D2729 M-03, D3034 M-05, F667 M-02), Schedule 40 (M-06)
            PIPE-PERF4 | 4.215 | 3.875 | false
            PIPE-PERF6 | 6.275 | 5.875 | false
            PIPE-COIL4 | 4.7   | 4     | true
            MAIN-4     | 4.215 | 3.975 | false
            MAIN-6     | 6.275 | 5.915 | false
            ROOF-4     | 4.215 | 3.975 | false
            ROOF-6     | 6.275 | 5.915 | false
            DISCH-15   | 1.900 | 1.610 | false
            DISCH-2    | 2.375 | 2.067 | false
            """)
    void pipeHasTheSizeOfItsStandard(String code, BigDecimal outside, BigDecimal inside, boolean corrugated) {
        JsonNode item = Shipped.items().get(code);
        JsonNode pipe = item.get("pipe");

        assertThat(Shipped.number(pipe.get("outside"))).isEqualByComparingTo(outside);
        assertThat(Shipped.number(pipe.get("inside")))
                .isEqualByComparingTo(inside)
                .isLessThan(outside);
        assertThat(pipe.get("corrugated").asBoolean()).isEqualTo(corrugated);
        assertThat(pipe.get("stick")).isEqualTo(item.get("material").get("holds"));
    }

    @Test
    void everyItemThatIsLaidAsPipeHasASize() {
        List<String> laid = Stream.of(Measure.DRAIN_PIPE, Measure.MAIN_PIPE, Measure.ROOF_PIPE, Measure.SUMP_DISCHARGE)
                .flatMap(measure -> Shipped.following(measure).stream())
                .toList();

        assertThat(laid).hasSize(9).allMatch(code -> Shipped.items().get(code).has("pipe"));
    }
}
