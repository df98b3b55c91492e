// SPDX-License-Identifier: Apache-2.0
package spadework.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.PlanJob;
import spadework.drawing.PlanLabels;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.job.Job;
import spadework.job.JobHead;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.wording.Language;

class PlaceWordsTest {

    /** The house's back wall faces north, so its street lies south. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            swale along the back lot line,                      NORTH
            low ground at the back of the yard,                 NORTH
            swale behind the house,                             NORTH
            borough storm drain in the street,                  SOUTH
            curb,                                               SOUTH
            ditch along the east lot line,                      EAST
            'east lot line, behind the house',                  EAST
            western ditch,                                      WEST
            sump outside wall B,                                EAST
            'sump outside wall B, pumped to the street ditch',  EAST
            swale behind the shed,                              ''
            foot of the bank below the garden,                  ''
            from the east corner to the west one,               ''
            from the back to the street,                        ''
            where water may back up,                            ''
            '',                                                 ''
            """)
    void wordsPointToOneSideOrToNone(String words, String side) {
        assertThat(PlaceWords.side(house(words), words))
                .isEqualTo(side.isEmpty() ? Optional.empty() : Optional.of(Side.valueOf(side)));
    }

    /** Typed for a homeowner who reads Spanish; English words count there too. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            cuneta en el límite de atrás,                  NORTH
            terreno bajo detrás de la casa,                NORTH
            drenaje pluvial de la calle,                   SOUTH
            zanja en el lado este,                         EAST
            este lado de la casa,                          ''
            zanja del oeste,                               WEST
            'pozo de bombeo fuera de la pared B',          EAST
            swale along the back lot line,                 NORTH
            'de la calle hacia atrás',                     ''
            terreno bajo,                                  ''
            """)
    void spanishWordsPointToOneSideOrToNone(String words, String side) {
        Job english = house(words);
        JobHead head = english.head();
        Job spanish = english.withHead(
                new JobHead(head.number(), head.title(), head.issued(), head.validDays(), Language.of("es")));

        assertThat(PlaceWords.side(spanish, words))
                .isEqualTo(side.isEmpty() ? Optional.empty() : Optional.of(Side.valueOf(side)));
    }

    @Test
    void withoutAFrontTheBackIsNowhere() {
        Job job = PlanJob.house(40, 28).wall("A", Side.NORTH, 0, 40).job();

        assertThat(PlaceWords.front(job)).isEmpty();
        assertThat(PlaceWords.side(job, "swale along the back lot line")).isEmpty();
        assertThat(PlanLabels.texts(PlanSketch.of(job))).doesNotContain("Street side");
    }

    @Test
    void theStreetIsMarkedOnItsSide() {
        Scene scene = PlanSketch.of(house("swale along the back lot line"));
        Shape.Label street = PlanLabels.of(scene).stream()
                .filter(label -> label.text().equals("Street side"))
                .findFirst()
                .orElseThrow();

        assertThat(street.y()).isGreaterThan(outline(scene).y() + outline(scene).height());
        assertThat(scene.alternative()).contains("The street side is the south side.");
    }

    @Test
    void anOutletIsDrawnWhereTheWordsHaveItAndItsPipeLeadsThere() {
        Scene scene = PlanSketch.of(house("swale along the back lot line"));

        // The sign of an open outlet is three strokes; it stands once in the figure and once before its words.
        assertThat(strokes(scene, Shape.Role.WATER)).hasSize(6);
        assertThat(strokes(scene, Shape.Role.WATER).subList(0, 3))
                .allSatisfy(
                        line -> assertThat(line.y1()).isLessThan(outline(scene).y()));
        assertThat(PlanLabels.texts(scene)).contains("swale along the back lot line");
        assertThat(scene.alternative()).contains("It is on the north side.");
    }

    @Test
    void anOutletThatLiesNobodyKnowsWhereIsDrawnApartAndSaidSo() {
        Scene scene = PlanSketch.of(house("swale behind the shed"));

        // Two strokes across the pipe's end in the figure; the sign itself stands below.
        assertThat(strokes(scene, Shape.Role.BREAK)).hasSize(2);
        assertThat(strokes(scene, Shape.Role.WATER))
                .hasSize(3)
                .allSatisfy(line -> assertThat(line.y1())
                        .isGreaterThan(outline(scene).y() + outline(scene).height()));
        assertThat(PlanLabels.texts(scene))
                .contains("swale behind the shed (which side of the house is not written down)");
        assertThat(scene.alternative()).contains("Which side of the house it is on is not written down.");
    }

    private static List<Shape.Line> strokes(Scene scene, Shape.Role role) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Shape.Line line && line.role() == role)
                .map(Shape.Line.class::cast)
                .toList();
    }

    private static Shape.Box outline(Scene scene) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Shape.Box box && box.role() == Shape.Role.HOUSE)
                .map(Shape.Box.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Job house(String words) {
        return PlanJob.house(40, 28)
                .wall("A", "back wall", Side.NORTH, 0, 40)
                .wall("B", "side wall", Side.EAST, 0, 28)
                .drain("D1", TeeAt.END, "M1", "A", "B")
                .main("M1", "O1")
                .outlet("O1", OutletKind.DAYLIGHT, words)
                .job();
    }
}
