// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Label;
import spadework.paperwork.Dossier;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.work.CaptionedDrawing;
import spadework.paperwork.work.ProfileDrawings;
import spadework.paperwork.work.SectionDrawings;
import spadework.paperwork.work.WallWork;

/** The drawings of every sample say what its other papers say. */
class SampleDrawingsTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            block-basement-to-swale,     'A | B',   'D1 M1 | R1'
            crawl-space-between-houses,  'A | B',   'D1 M1'
            poured-basement-with-sump,   'A D | B | C', 'D1 from its start | D1 from its end | R1'
            stone-wall-engineer-first,   'A',       'D1 M1'
            """)
    void wallsWithEqualFiguresShareASectionAndEveryWayOfTheWaterHasAProfile(
            String sample, String sections, String profiles) {
        Dossier dossier = dossier(sample);

        assertThat(labels(SectionDrawings.of(dossier))).isEqualTo(sections);
        assertThat(labels(ProfileDrawings.of(dossier))).isEqualTo(profiles);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void aSectionPrintsTheFiguresAndTheWordOfTheWallsOwnPage(Path sample) {
        Dossier dossier = Samples.bid(sample).dossier();
        Scene plan = PlanSketch.of(dossier.job());
        for (WallWork wall : ScopePaper.of(dossier, plan).walls()) {
            Scene section = SectionDrawings.of(dossier).stream()
                    .filter(drawing -> drawing.labels().contains(wall.label()))
                    .findFirst()
                    .orElseThrow()
                    .scene();
            assertThat(words(section))
                    .contains(
                            wall.trench().depth(),
                            wall.trench().bottomWidth(),
                            wall.footing().thickness(),
                            wall.footing().projection(),
                            wall.finish().dryFilm(),
                            wall.finish().word());
            assertThat(section.alternative())
                    .contains(
                            wall.trench().depth(),
                            wall.trench().bottomWidth(),
                            wall.finish().material());
            String deeper = dossier.job().getWall(wall.label()).deepest().text();
            assertThat(wall.depth()).contains(deeper);
            assertThat(words(section)).contains(deeper);
        }
    }

    private static String labels(List<CaptionedDrawing> drawings) {
        return String.join(
                " | ",
                drawings.stream()
                        .map(drawing -> String.join(" ", drawing.labels()))
                        .toList());
    }

    private static String words(Scene scene) {
        return String.join(
                " ",
                scene.shapes().stream()
                        .filter(Label.class::isInstance)
                        .map(shape -> ((Label) shape).text())
                        .toList());
    }

    private static Dossier dossier(String sample) {
        return Samples.bid(Path.of("sample-quotes", sample)).dossier();
    }

    static Stream<Path> papered() {
        return Samples.papered().stream();
    }
}
