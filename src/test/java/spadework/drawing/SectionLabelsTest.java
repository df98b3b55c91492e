// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.section.SectionSketch;
import spadework.drawing.section.WallCovering;
import spadework.drawing.shape.Scene;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.takeoff.CrossSection;
import spadework.wording.Language;

class SectionLabelsTest {

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noLabelLiesOverALineOrAnotherLabelOrLeavesTheSheet(long seed) {
        Scene scene = SectionSketch.of(SectionJob.of(seed), SectionJob.RUBBER, Language.ENGLISH);

        assertThat(PlanLabels.faults(scene)).isEmpty();
        assertThat(scene.height()).isLessThan(400);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyMeasureStandsOnTheSheetAndInTheWords(long seed) {
        CrossSection section = SectionJob.of(seed);
        Scene scene = SectionSketch.of(section, SectionJob.RUBBER, Language.ENGLISH);

        List<String> texts = PlanLabels.texts(scene);
        List<String> alone = List.of(
                section.depth().text(),
                section.trenchDepth().text(),
                section.bottomWidth().text(),
                section.reach().text());
        assertThat(texts).containsAll(alone);
        String sheet = String.join(" ", texts);
        List<String> inside = List.of(
                section.footing().thickness().text(),
                section.footing().projection().text(),
                section.bed().orElseThrow().stone().text(),
                "60 mil",
                "waterproofing");
        assertThat(sheet).contains(inside);
        assertThat(scene.alternative()).contains(alone).contains(inside);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(textBlock = """
            SLOPED,   NOT_CLASSED, Bank laid back 1.5 : 1,       soil not classed
            SLOPED,   STABLE_ROCK, Bank laid back 1 : 1,         soil type B
            SHIELDED, C,           Shield between upright banks, soil type C
            UPRIGHT,  B,           'Upright bank, no support',   only if the competent person finds it safe
            """)
    void theBankIsNamedWithItsSoil(Protection protection, SoilType soil, String bank, String says) {
        Scene scene = SectionSketch.of(SectionJob.at(4, soil, protection), SectionJob.RUBBER, Language.ENGLISH);

        assertThat(PlanLabels.texts(scene)).contains(bank);
        assertThat(String.join(" ", PlanLabels.texts(scene))).contains(says);
        assertThat(scene.alternative()).contains(bank).contains(says);
    }

    /** 29 CFR 1926.652(b) (T-14): deeper than 20 ft a registered professional engineer designs the bank. */
    @ParameterizedTest(name = "{0} ft to the footing's top")
    @CsvSource({"19.3, false", "19.33333333333333, false", "19.4, true"})
    void aTrenchOverTwentyFeetIsLeftToAnEngineer(double depth, boolean engineer) {
        Scene scene = SectionSketch.of(
                SectionJob.at(depth, SoilType.C, Protection.SLOPED), SectionJob.RUBBER, Language.ENGLISH);

        assertThat(scene.alternative().contains("an engineer designs it")).isEqualTo(engineer);
        assertThat(String.join(" ", PlanLabels.texts(scene)).contains("an engineer designs it"))
                .isEqualTo(engineer);
    }

    @Test
    void longWordsForTheCoverAreBrokenAndLongTitlesCut() {
        CrossSection section = SectionJob.named(
                SectionJob.at(5, SoilType.B, Protection.SLOPED),
                Stream.iterate(1, i -> i + 1)
                        .limit(12)
                        .map(i -> "Long wall of wing " + i)
                        .toArray(String[]::new));
        Scene scene = SectionSketch.of(
                section,
                new WallCovering(
                        "self-adhering sheet of rubberised bitumen with a film of polyethylene, two layers",
                        "",
                        "dampproofing"),
                Language.ENGLISH);

        assertThat(PlanLabels.faults(scene)).isEmpty();
        assertThat(PlanLabels.texts(scene)).anyMatch(text -> text.endsWith("…"));
        assertThat(scene.alternative()).contains("Long wall of wing 12").contains("two layers, dampproofing");
    }

    @Test
    void theSameSectionGivesTheSameScene() {
        CrossSection section = SectionJob.of(7);

        assertThat(SectionSketch.of(section, SectionJob.RUBBER, Language.ENGLISH))
                .isEqualTo(SectionSketch.of(section, SectionJob.RUBBER, Language.ENGLISH));
    }

    private static LongStream seeds() {
        return LongStream.range(0, 200);
    }
}
