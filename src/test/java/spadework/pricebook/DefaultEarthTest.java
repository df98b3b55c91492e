// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Texture;

/** How soils swell and shrink in the default book. */
class DefaultEarthTest {

    @Test
    void everyTextureLiesInOneGroup() {
        List<String> covered = new ArrayList<>();
        Shipped.book().get("earth").forEach(group -> covered.addAll(Shipped.texts(group.get("textures"))));

        assertThat(covered).containsExactlyInAnyOrderElementsOf(Shipped.words(Texture.class));
    }

    /**
     * Swell: a list in an engineering text (E-05: gravel and sand 12, earth 25, clay 40). Shrink: FM 5-434 Table 1-1
     * (E-01 to E-03, from memory: bank 1.00 is 0.95 of sand and 0.90 of earth or clay, compacted).
     */
    @ParameterizedTest(name = "{0}: swell {1}%, shrink {2}%")
    @CsvSource(delimiter = '|', textBlock = """
            sand       | 12 |  5 | E-05 E-01
            gravel     | 12 |  5 | E-05 E-01
            loam       | 25 | 10 | E-05 E-02
            silty clay | 40 | 10 | E-05 E-03
            clay       | 40 | 10 | E-05 E-03
            """)
    void factorIsThePublishedOneAndCitesIt(String texture, BigDecimal swell, BigDecimal shrink, String rows) {
        JsonNode group = groupOf(texture);

        assertThat(Shipped.number(group.get("swell"))).isEqualByComparingTo(swell);
        assertThat(Shipped.number(group.get("shrink"))).isEqualByComparingTo(shrink);
        assertThat(group.get("source").get("text").asText())
                .contains(rows.split(" "))
                .contains("FM 5-434", "memory");
    }

    @Test
    void soilNotYetKnownTakesTheWorstForHaulAndSaysSo() {
        JsonNode unknown = groupOf("unknown");

        Shipped.book().get("earth").forEach(group -> {
            assertThat(Shipped.number(unknown.get("swell"))).isGreaterThanOrEqualTo(Shipped.number(group.get("swell")));
            assertThat(Shipped.number(unknown.get("shrink"))).isLessThanOrEqualTo(Shipped.number(group.get("shrink")));
        });
        assertThat(unknown.get("source").get("text").asText()).startsWith("Worst for haul on purpose");
    }

    /** Open-graded stone: 1.4 tons a cubic yard (E-10, a road program's rule); 1.406 in a DOT memo (E-11). */
    @Test
    void stoneWeighsWhatOpenGradedStoneWeighs() {
        assertThat(Shipped.book().get("stoneTonsPerCubicYard").asText()).isEqualTo("1.40 ton/cy");
        assertThat(Shipped.book().get("truckCubicYards").asText()).isEqualTo("10 cy");
    }

    private static JsonNode groupOf(String texture) {
        for (JsonNode group : Shipped.book().get("earth")) {
            if (Shipped.texts(group.get("textures")).contains(texture)) {
                return group;
            }
        }
        throw new AssertionError("no group for " + texture);
    }
}
