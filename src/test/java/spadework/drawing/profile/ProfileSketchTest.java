// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static spadework.drawing.ProfileSketchJob.chain;
import static spadework.drawing.ProfileSketchJob.level;
import static spadework.drawing.ProfileSketchJob.none;
import static spadework.drawing.ProfileSketchJob.reach;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.PlanLabels;
import spadework.drawing.ProfileSketchJob;
import spadework.drawing.SectionGeometryTest;
import spadework.drawing.profile.ProfileReach.Kind;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.measure.Length;
import spadework.wording.Language;

class ProfileSketchTest {
    private static final Pattern TIMES = Pattern.compile("heights are drawn (\\d+) times");

    @Test
    void pipeAndGroundAreDrawnToTheStatedScales() {
        Scene scene = ProfileSketch.of(ProfileSketchJob.measured(), Language.ENGLISH);

        double across = SectionGeometryTest.scale(scene);
        double upright = across * times(scene);
        Line main = pipes(scene, Role.MAIN).get(0);
        Line mainEnd = pipes(scene, Role.MAIN).get(1);
        assertThat(mainEnd.x2() - main.x1()).isCloseTo(60 * across, within(0.5));
        assertThat(mainEnd.y2() - main.y1()).isCloseTo(0.9 * upright, within(0.5));
        List<Line> ground = pipes(scene, Role.GROUND);
        assertThat(main.y1() - ground.get(1).y1())
                .as("ground over the pipe's bottom")
                .isCloseTo(4 * upright, within(0.5));
    }

    /** Straight from end to end the ground would be drawn at 96; at the corner it stands 2 ft higher. */
    @Test
    void theGroundIsDrawnFromCornerToCorner() {
        ProfileReach ends = reach("D1", Kind.DRAIN, 40, level(92.5), level(92.1), level(96), level(96));
        ProfileReach bent = new ProfileReach(
                ends.label(),
                ends.kind(),
                ends.length(),
                ends.startInvert(),
                ends.endInvert(),
                ends.startGrade(),
                ends.endGrade(),
                List.of(new GroundPoint(Length.ofFeet(10), Length.ofFeet(98))),
                ends.insideDiameter(),
                ends.outsideDiameter());
        Scene scene = ProfileSketch.of(chain(bent), Language.ENGLISH);

        double across = SectionGeometryTest.scale(scene);
        List<Line> ground = pipes(scene, Role.GROUND);
        assertThat(ground).hasSize(2);
        assertThat(ground.get(0).x2() - ground.get(0).x1()).isCloseTo(10 * across, within(0.5));
        assertThat(ground.get(0).y1() - ground.get(0).y2()).isCloseTo(2 * across * times(scene), within(0.5));
        assertThat(ground.get(1).x1()).isEqualTo(ground.get(0).x2());
        assertThat(ground.get(1).y2()).isCloseTo(ground.get(0).y1(), within(0.01));
        assertThat(scene.alternative()).contains("At the corner", "98.00 ft");
    }

    @Test
    void theLevelsAtTheSideMeasureTheSameHeights() {
        Scene scene = ProfileSketch.of(ProfileSketchJob.measured(), Language.ENGLISH);

        List<Shape.Label> levels = PlanLabels.of(scene).stream()
                .filter(label -> label.anchor().equals("end"))
                .toList();
        Shape.Label first = levels.get(0);
        Shape.Label last = levels.get(levels.size() - 1);
        double feet = Double.parseDouble(last.text()) - Double.parseDouble(first.text());
        double upright = SectionGeometryTest.scale(scene) * times(scene);
        assertThat(first.y() - last.y()).isCloseTo(feet * upright, within(0.5));
    }

    @ParameterizedTest(name = "from {0} to {1} ft: {2}")
    @CsvSource(textBlock = """
            92.50, 91.90, falls 1.00%
            92.00, 92.00, 'level, no fall'
            # back-pitched: the water would run the wrong way
            92.10, 92.40, rises 0.50% against the flow
            """)
    void eachReachSaysHowItFalls(double start, double end, String says) {
        ProfileChain chain = chain(reach("M1", Kind.MAIN, 60, level(start), level(end), none(), none()));
        Scene scene = ProfileSketch.of(chain, Language.ENGLISH);

        assertThat(PlanLabels.texts(scene)).contains("M1: solid pipe, 60 ft, " + says);
        assertThat(scene.alternative()).contains(says);
    }

    /** Cover is counted from the pipe's outside top: at 40 ft 96.10 less 92.12 and 4.1 in of pipe. */
    @Test
    void invertGroundAndCoverStandUnderEachStation() {
        assertThat(PlanLabels.texts(ProfileSketch.of(ProfileSketchJob.measured(), Language.ENGLISH)))
                .contains("0 ft", "40 ft", "100 ft", "92.50 ft", "92.12 / 92.10", "91.20 ft", "96.50 ft", "96.10 ft")
                .contains("3 ft 8 in");
    }

    @Test
    void twoGroundLevelsAtOnePlaceAreBothSaidAndTheLesserCoverCounts() {
        Scene scene = ProfileSketch.of(
                chain(
                        reach("D1", Kind.DRAIN, 40, level(92.5), level(92), level(96), level(96)),
                        reach("M1", Kind.MAIN, 60, level(92), level(91.2), level(94.3417), level(91.4))),
                Language.ENGLISH);

        assertThat(PlanLabels.texts(scene)).contains("96.00 / 94.34", "2 ft", "none");
    }

    @Test
    void aReachWithoutALevelIsNotDrawnAndSaysSo() {
        ProfileChain chain = chain(
                reach("D1", Kind.DRAIN, 40, level(92.5), none(), none(), none()),
                reach("M1", Kind.MAIN, 60, level(92.1), level(91.2), none(), none()));
        Scene scene = ProfileSketch.of(chain, Language.ENGLISH);

        assertThat(pipes(scene, Role.DRAIN)).isEmpty();
        assertThat(pipes(scene, Role.MAIN)).isNotEmpty();
        assertThat(pipes(scene, Role.GROUND)).isEmpty();
        assertThat(PlanLabels.texts(scene))
                .contains("D1: perforated pipe, 40 ft, slope not measured")
                .filteredOn("not measured"::equals)
                .hasSizeGreaterThanOrEqualTo(6);
        assertThat(scene.alternative()).contains("92.50 ft at the start and not measured at the end");
    }

    @Test
    void withoutALineThatIsKnownAtBothEndsNothingIsDrawnButTheTable() {
        ProfileChain chain = new ProfileChain(
                List.of(reach("R1", Kind.ROOF_LINE, 60, level(95.4), none(), none(), none())),
                "O1",
                "curb",
                none(),
                "");
        Scene scene = ProfileSketch.of(chain, Language.ENGLISH);

        assertThat(PlanLabels.texts(scene)).contains("Too few levels are measured: the fall cannot be drawn.");
        assertThat(PlanLabels.texts(scene)).contains("95.40 ft");
        assertThat(pipes(scene, Role.ROOF_LINE)).isEmpty();
        assertThat(PlanLabels.faults(scene)).isEmpty();
        assertThat(scene.alternative()).doesNotContain("times as large");
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noLabelLiesOverALineOrAnotherLabelOrLeavesTheSheet(long seed) {
        Scene scene = ProfileSketch.of(ProfileSketchJob.random(seed), Language.ENGLISH);

        assertThat(PlanLabels.faults(scene)).isEmpty();
        assertThat(scene.height()).isLessThan(360);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyMeasuredLevelStandsInTheWords(long seed) {
        ProfileChain chain = ProfileSketchJob.random(seed);
        String words = ProfileSketch.of(chain, Language.ENGLISH).alternative();

        for (ProfileReach reach : chain.reaches()) {
            assertThat(words)
                    .contains(reach.label() + ", ")
                    .contains(reach.length().text());
            for (Optional<Length> level :
                    List.of(reach.startInvert(), reach.endInvert(), reach.startGrade(), reach.endGrade())) {
                assertThat(words).contains(level.map(Length::levelText).orElse("not measured"));
            }
        }
        assertThat(words).contains(chain.place());
    }

    @Test
    void aReachWithoutLengthIsRefused() {
        assertThatThrownBy(() -> reach("M1", Kind.MAIN, 0, none(), none(), none(), none()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double times(Scene scene) {
        return PlanLabels.texts(scene).stream()
                .map(TIMES::matcher)
                .filter(Matcher::find)
                .map(found -> Double.parseDouble(found.group(1)))
                .findFirst()
                .orElseThrow();
    }

    /** Lines of medium weight: pipe bottoms and ground. */
    private static List<Line> pipes(Scene scene, Role role) {
        return scene.shapes().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .filter(line -> line.role() == role && line.weight() == Weight.MEDIUM)
                .toList();
    }

    private static LongStream seeds() {
        return LongStream.range(0, 200);
    }
}
