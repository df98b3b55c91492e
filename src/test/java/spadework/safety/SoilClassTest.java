// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Jobs;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;

/** 29 CFR 1926 Subpart P App. A: what was dug before is Type B at best, and with free water Type C. */
class SoilClassTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"A, soil-type-a", "STABLE_ROCK, soil-rock-beside-footing", "B, ", "C, ", "NOT_CLASSED, "})
    void typesThatCannotStandBesideAFoundation(SoilType type, String id) {
        List<Finding> found = SoilClass.beside(type);
        assertThat(found).extracting(Finding::id).isEqualTo(id == null ? List.of() : List.of(id));
        assertThat(found).extracting(Finding::severity).allMatch(Severity.STOP::equals);
    }

    @Test
    void somebodyHasToClassIt() {
        assertThat(SoilClass.confirm(SoilType.NOT_CLASSED).id()).isEqualTo("soil-not-classed");
        assertThat(SoilClass.confirm(SoilType.B))
                .extracting(Finding::id, Finding::severity, Finding::values)
                .containsExactly("soil-class-confirm", Severity.MUST, java.util.Map.of("type", "B"));
        assertThat(List.of(SoilClass.unnamed(), SoilClass.seepageUnknown()))
                .extracting(Finding::id, Finding::severity)
                .containsExactly(tuple("soil-not-named", Severity.MUST), tuple("seepage-unknown", Severity.MUST));
    }

    /** App. A (b), Type C (iii): soil from which water freely seeps is Type C, whoever calls it A or B. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({
        "A, FREE, true",
        "B, FREE, true",
        "C, FREE, false",
        "NOT_CLASSED, FREE, false",
        "A, DAMP, false",
        "B, UNKNOWN, false"
    })
    void freeWaterMakesTypeC(SoilType type, Seepage seepage, boolean stop) {
        assertThat(seeps(type, seepage)).hasSize(stop ? 1 : 0).allSatisfy(f -> {
            assertThat(f.severity()).isEqualTo(Severity.STOP);
            assertThat(f.values()).containsEntry("type", type.name());
        });
    }

    private static List<Finding> seeps(SoilType type, Seepage seepage) {
        return Checked.findings(Jobs.job(
                        Jobs.with(Jobs.site(), new Soil(Texture.LOAM, seepage, type)), Jobs.water(), Jobs.wall()))
                .stream()
                .filter(f -> f.id().equals("soil-seeps"))
                .toList();
    }

    @ParameterizedTest(name = "{0}: told {1}")
    @CsvSource({"UNKNOWN, true", "LOAM, false", "FILL, false"})
    void textureThatNobodyFeltIsTold(Texture texture, boolean described) {
        List<String> ids = Checked.findings(Jobs.job(
                        Jobs.with(Jobs.site(), new Soil(texture, Seepage.NONE, SoilType.B)), Jobs.water(), Jobs.wall()))
                .stream()
                .map(Finding::id)
                .toList();
        assertThat(ids.contains("soil-texture-unknown")).isEqualTo(described);
    }
}
