// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.FilmThickness;
import spadework.measure.UnreadableMeasure;

/** The list of IRC R406.2 (F-19): 40 mil (1 mm), 60 mil (1.5 mm), 1/8 in (3 mm). Either figure earns the word. */
class CodeFilmTest {
    @ParameterizedTest(name = "{1} of {0}: waterproofing {2}")
    @CsvSource(textBlock = """
            LIQUID_SYNTHETIC_RUBBER,  60 mil,    true
            LIQUID_SYNTHETIC_RUBBER,  59.06 mil, true
            LIQUID_SYNTHETIC_RUBBER,  59.05 mil, false
            LIQUID_SYNTHETIC_RUBBER,  59 mil,    false
            LIQUID_SYNTHETIC_RUBBER,  1.5 mm,    true
            LIQUID_SYNTHETIC_RUBBER,  1.499 mm,  false
            FLEXIBLE_POLYMER_CEMENT,  1.5 mm,    true
            FLEXIBLE_POLYMER_CEMENT,  1.49 mm,   false
            POLYMER_MODIFIED_ASPHALT, 40 mil,    true
            POLYMER_MODIFIED_ASPHALT, 1 mm,      true
            POLYMER_MODIFIED_ASPHALT, 0.99 mm,   false
            POLYMER_MODIFIED_ASPHALT, 39 mil,    false
            FIBER_REINFORCED_CEMENT,  125 mil,   true
            FIBER_REINFORCED_CEMENT,  3 mm,      true
            FIBER_REINFORCED_CEMENT,  2.99 mm,   false
            BITUMINOUS_COATING,       500 mil,   false
            SHEET_MEMBRANE,           90 mil,    false
            PORTLAND_PARGE,           375 mil,   false
            """)
    void theWordFollowsTheFilm(TreatmentKind generic, String film, boolean expected) throws UnreadableMeasure {
        assertThat(CodeFilm.isWaterproofing(generic, FilmThickness.parse(film))).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0}: from {1}")
    @CsvSource(textBlock = """
            LIQUID_SYNTHETIC_RUBBER,  60 mil (1.5 mm)
            POLYMER_MODIFIED_ASPHALT, 40 mil (1 mm)
            FIBER_REINFORCED_CEMENT,  125 mil (3 mm)
            BITUMINOUS_COATING,
            """)
    void printedWithItsMetricEqual(TreatmentKind generic, String printed) {
        assertThat(CodeFilm.printed(generic).orElse(null)).isEqualTo(printed);
    }

    /** 1 mil is 0.0254 mm: 60 mil are 1.524 mm. */
    @Test
    void milsAndMillimeters() throws UnreadableMeasure {
        assertThat(new FilmThickness(60).millimeters()).isEqualTo(1.524, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(FilmThickness.parse("1.524 mm").text()).isEqualTo("60 mil");
        assertThat(FilmThickness.parse("1.5 mm").text()).isEqualTo("59.1 mil (1.5 mm)");
        assertThat(FilmThickness.parse("59 mil").text()).isEqualTo("59 mil");
    }
}
