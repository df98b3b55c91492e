// SPDX-License-Identifier: Apache-2.0
package spadework.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormerSpellingTest {

    @ParameterizedTest
    @CsvSource({
        "licence,                 license",
        "labour,                  labor",
        "labour/perHour,          labor/perHour",
        "neighbour footing,       neighbor footing",
        "fibre reinforced cement, fiber reinforced cement",
        "salesperson licence,     salesperson license",
        "content-licence-number,  content-license-number"
    })
    void aFormerSpellingAndTheOneOfTodayLeadToEachOther(String former, String today) {
        assertThat(FormerSpelling.current(former)).isEqualTo(today);
        assertThat(FormerSpelling.of(today)).contains(former);
        assertThat(FormerSpelling.current(today)).isEqualTo(today);
    }

    @ParameterizedTest
    @CsvSource({"english, en", "spanish, es"})
    void aLanguageIsKnownByTheNameThatItHadBefore(String former, String today) {
        assertThat(FormerSpelling.current(former)).isEqualTo(today);
        assertThat(FormerSpelling.current("in " + former)).isEqualTo("in " + former);
    }

    @Test
    void aCodeOfTheBundledBookIsFoundByTheOneItHadBefore() {
        assertThat(FormerSpelling.currentCode("PARGE-FIBRE")).isEqualTo("PARGE-FIBER");
        assertThat(FormerSpelling.currentCode("PARGE-PC")).isEqualTo("PARGE-PC");
    }

    @Test
    void whatWasNeverSpelledOtherwiseHasNoFormerSpelling() {
        assertThat(FormerSpelling.of("material/cost")).isEmpty();
        assertThat(FormerSpelling.current("labourer")).isEqualTo("labourer");
        assertThat(FormerSpelling.of("laborer")).isEmpty();
    }
}
