// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.wording.Language;

class PlanLabelsTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void noLabelLiesOverALineOrAnotherLabelOrLeavesTheSheet(String name, Job job) {
        assertThat(PlanLabels.faults(PlanSketch.of(job))).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void everyWallsLabelStandsInBoldAndItsLengthStandsOnTheSheet(String name, Job job) {
        Scene scene = PlanSketch.of(job);

        List<String> bold = PlanLabels.of(scene).stream()
                .filter(Label::bold)
                .map(Label::text)
                .toList();
        for (int i = 0; i < job.walls().size(); i++) {
            Wall wall = job.walls().get(i);
            String mark = "(" + (i + 1) + ")";
            assertThat(bold).containsAnyOf(wall.label(), mark);
            assertThat(PlanLabels.texts(scene))
                    .anyMatch(text -> text.equals(wall.label())
                            || text.equals(mark + " " + wall.label() + ": "
                                    + wall.length().text()));
            assertThat(PlanLabels.texts(scene))
                    .anyMatch(text -> text.equals(wall.length().text())
                            || text.endsWith(wall.label() + ": " + wall.length().text()));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void everyOutletIsNamed(String name, Job job) {
        List<String> texts = PlanLabels.texts(PlanSketch.of(job));

        job.water().outlets().forEach(outlet -> assertThat(texts).contains(outlet.label()));
    }

    @Test
    void theTwelveWallsNeedNoKey() {
        Scene scene = PlanSketch.of(PlanJob.twelveWalls());

        assertThat(PlanLabels.texts(scene)).noneMatch(text -> text.contains(": "));
        assertThat(scene.height()).isLessThan(350);
    }

    /** On a page that lies on its side every wall has its own label, and letter and A4 both hold the plan. */
    @Test
    void theTwelveWallsFillAPageOfTheirOwn() {
        Scene scene = PlanSketch.onItsOwnPage(PlanJob.twelveWalls(), Language.ENGLISH);

        assertThat(PlanLabels.faults(scene)).isEmpty();
        assertThat(PlanLabels.of(scene).stream().filter(Label::bold).map(Label::text))
                .contains("A", "L")
                .noneMatch(text -> text.startsWith("("));
        assertThat(PlanLabels.of(scene)).allMatch(label -> label.size() >= 7);
        assertThat(scene.width()).isLessThanOrEqualTo((11 - 1.6) * 72);
        assertThat(scene.height()).isBetween(300.0, (8.27 - 0.82 - 0.74) * 72 - 24);
    }

    @Test
    void lengthsStandOutsideTheHouse() {
        Job job = PlanJob.house(40, 28)
                .wall("A", Side.NORTH, 0, 39)
                .wall("B", Side.EAST, 0, 27)
                .wall("C", Side.SOUTH, 0, 38)
                .wall("D", Side.WEST, 0, 26)
                .job();
        Scene scene = PlanSketch.of(job);

        Shape.Box house = scene.shapes().stream()
                .filter(Shape.Box.class::isInstance)
                .map(Shape.Box.class::cast)
                .findFirst()
                .orElseThrow();
        Rect inside = new Rect(house.x(), house.y(), house.x() + house.width(), house.y() + house.height());
        List<Label> lengths = PlanLabels.of(scene).stream()
                .filter(label -> label.role() == Role.DIMENSION)
                .toList();
        assertThat(lengths).extracting(Label::text).containsExactly("39 ft", "27 ft", "38 ft", "26 ft");
        assertThat(lengths).noneMatch(label -> LabelText.box(label).overlaps(inside));
    }

    @Test
    void aWallLabelTooLongForTheFigureIsANumberThereAndStandsInFullInTheKey() {
        String label = "The long wall below the kitchen";
        Scene scene = PlanSketch.of(
                PlanJob.house(40, 28).wall(label, Side.NORTH, 0, 40).job());

        assertThat(PlanLabels.texts(scene))
                .contains("(1)", "(1) " + label + ": 40 ft")
                .doesNotContain(label);
    }

    @Test
    void anOutletsNameTooLongForTheFigureIsCutThereAndStandsInFullInTheKey() {
        String label = "Swale along the back lot line";
        Scene scene = PlanSketch.of(PlanJob.house(40, 28)
                .wall("A", Side.NORTH, 0, 40)
                .outlet(label, OutletKind.DAYLIGHT)
                .job());

        assertThat(PlanLabels.texts(scene)).contains("Swale along the back l…", label);
    }

    /** The check itself must be able to fail. */
    @Test
    void aLabelOverALineIsFound() {
        Scene scene = new Scene(
                100,
                100,
                List.of(
                        new Shape.Line(0, 50, 100, 50, Weight.THIN, Role.PLAIN, false),
                        new Label(50, 52, "over", "middle", 9, false, Role.PLAIN),
                        new Label(52, 53, "again", "middle", 9, false, Role.PLAIN),
                        new Label(95, 20, "beyond", "start", 9, false, Role.PLAIN)),
                "");

        assertThat(PlanLabels.faults(scene)).hasSize(4).contains("over lies over again", "beyond leaves the sheet");
    }

    private static Stream<Arguments> jobs() {
        Stream<Arguments> made = Stream.of(
                Arguments.of("two walls at a corner", PlanJob.corner()),
                Arguments.of("twelve walls", PlanJob.twelveWalls()));
        return Stream.concat(
                made, LongStream.range(0, 300).mapToObj(seed -> Arguments.of("seed " + seed, RandomJobs.of(seed))));
    }

    @Test
    void namesOfTwoPipesThatRoundACornerStandOnEitherSideOfThem() {
        Scene scene = PlanSketch.of(PlanJob.house(42, 28)
                .wall("A", Side.NORTH, 0, 42)
                .wall("B", Side.EAST, 0, 26)
                .drain("D1", TeeAt.END, "M1", "A", "B")
                .main("M1", "O1", 64)
                .roofLine("R1", "O2", 78)
                .downspout("DS1", "R1", Side.EAST, 1)
                .outlet("O1", "swale along the south lot line", 60)
                .outlet("O2", "bank of that swale, south", 50)
                .job());
        Map<String, Double> at = PlanLabels.of(scene).stream()
                .collect(Collectors.toMap(Label::text, Label::x, (first, second) -> first));
        assertThat(List.of(at.get("M1 64 ft"), at.get("O1"), at.get("O2"), at.get("R1 78 ft")))
                .isSorted();
        assertThat(PlanLabels.faults(scene)).isEmpty();
    }
}
