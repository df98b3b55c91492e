// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {

    @ParameterizedTest(name = "{0} is meant as {1}")
    @CsvSource(nullValues = "nothing", textBlock = """
            # two letters swapped, one missing, one too many, one wrong, capitals
            lenght,     length
            lngth,      length
            lengthh,    length
            lemgth,     length
            LENGTH,     length
            # a third of the letters may differ
            windowWels, windowWells
            windowell,  windowWells
            # nothing is near
            colour,     nothing
            x,          nothing
            """)
    void nearestKnownName(String written, String meant) {
        assertThat(NearestName.of(written, List.of("label", "length", "windowWells"))
                        .orElse(null))
                .isEqualTo(meant);
    }

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({"kitten, sitting, 3", "ab, ba, 1", "'', abc, 3", "abc, abc, 0", "flaw, lawn, 2"})
    void distanceCountsEdits(String one, String other, int edits) {
        assertThat(NearestName.distance(one, other)).isEqualTo(edits);
        assertThat(NearestName.distance(other, one)).isEqualTo(edits);
    }
}
