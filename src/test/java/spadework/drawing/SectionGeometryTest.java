// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.section.SectionSketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Area;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Footing;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.measure.Length;
import spadework.press.svg.SvgLineStyle;
import spadework.takeoff.CrossSection;
import spadework.wording.Language;

public class SectionGeometryTest {
    private static final Offset<Double> HALF_A_POINT = within(0.5);

    /** Slopes by 29 CFR 1926 Subpart P App. B Table B-1 (T-09); beside a foundation nothing is better than B (T-04). */
    @ParameterizedTest(name = "{0} ft in {1}, {2}: the bank goes back {3} for 1")
    @CsvSource(textBlock = """
            5.5, B,           SLOPED,   1.0
            5.5, A,           SLOPED,   1.0
            5.5, C,           SLOPED,   1.5
            5.5, NOT_CLASSED, SLOPED,   1.5
            5.5, STABLE_ROCK, SLOPED,   1.0
            8,   C,           SHIELDED, 0
            2,   B,           UPRIGHT,  0
            19,  C,           SLOPED,   1.5
            1,   B,           SLOPED,   1.0
            """)
    void theTrenchIsDrawnToScale(double depth, SoilType soil, Protection protection, double slope) {
        Scene scene = SectionSketch.of(SectionJob.at(depth, soil, protection), SectionJob.RUBBER, Language.ENGLISH);

        double scale = scale(scene);
        Area wall = areas(scene).get(0);
        Area footing = areas(scene).get(1);
        Line bank = ground(scene).get(2);
        double face = wall.corners().get(1).x();
        double grade = bank.y1();
        double full = depth + 8.0 / 12;
        assertThat(footing.corners().get(0).y()).as("footing top").isCloseTo(grade + depth * scale, HALF_A_POINT);
        assertThat(footing.corners().get(2).y()).as("footing bottom").isCloseTo(grade + full * scale, HALF_A_POINT);
        assertThat(footing.corners().get(1).x()).as("projection").isCloseTo(face + 0.5 * scale, HALF_A_POINT);
        assertThat(bank.x2()).as("foot of the bank").isCloseTo(face + 2.5 * scale, HALF_A_POINT);
        assertThat(bank.y2()).as("bottom of the trench").isCloseTo(grade + full * scale, HALF_A_POINT);
        assertThat(bank.x1()).as("edge").isCloseTo(face + (2.5 + slope * full) * scale, HALF_A_POINT);
    }

    @Test
    void thePipeLiesOnTwoInchesOfStoneHalfWayAcrossTheBottom() {
        CrossSection section = SectionJob.at(5.5, SoilType.B, Protection.SLOPED);
        Scene scene = SectionSketch.of(section, SectionJob.RUBBER, Language.ENGLISH);

        Dot pipe = dots(scene, Role.DRAIN).get(0);
        double scale = scale(scene);
        Area footing = areas(scene).get(1);
        double outside = section.bed().orElseThrow().pipeOutside().feet();
        assertThat(pipe.radius()).isCloseTo(outside / 2 * scale, HALF_A_POINT);
        assertThat(footing.corners().get(2).y() - pipe.y() - pipe.radius()).isCloseTo(2.0 / 12 * scale, HALF_A_POINT);
        assertThat(pipe.x() - footing.corners().get(2).x()).isCloseTo(1 * scale, HALF_A_POINT);
    }

    /** IRC R405.1 (F-04 to F-06): stone 6 in over the footing's top or the pipe's, whichever is higher. */
    @ParameterizedTest(name = "footing {0} in thick: stone {1} in high")
    @CsvSource({"8, 14", "12, 18", "6, 12.22"})
    void fabricLiesOnTheStoneAndTheStonesStayUnderIt(double thickness, double height) {
        CrossSection section = SectionJob.at(6, SoilType.B, Protection.SLOPED, thickness, 6, 24);
        Scene scene = SectionSketch.of(section, SectionJob.RUBBER, Language.ENGLISH);

        double scale = scale(scene);
        double bottom = areas(scene).get(1).corners().get(2).y();
        List<Line> fabric = lines(scene, Role.FABRIC);
        Line over = fabric.get(1);
        assertThat(over.y1()).isEqualTo(over.y2()).isCloseTo(bottom - height / 12 * scale, HALF_A_POINT);
        assertThat(fabric.get(0).y2() - fabric.get(0).y1()).as("turned up 6 in").isCloseTo(0.5 * scale, HALF_A_POINT);
        assertThat(fabric.get(2).y1() - fabric.get(2).y2()).as("turned up 6 in").isCloseTo(0.5 * scale, HALF_A_POINT);
        assertThat(dots(scene, Role.STONE)).hasSizeGreaterThan(40).allSatisfy(stone -> {
            assertThat(stone.y() - stone.radius()).isGreaterThan(over.y1());
            assertThat(stone.y() + stone.radius()).isLessThan(bottom);
        });
    }

    @Test
    void theCoverRunsFromGradeDownToTheFootingAndOntoIt() {
        Scene scene = SectionSketch.of(
                SectionJob.at(5.5, SoilType.B, Protection.SLOPED), SectionJob.RUBBER, Language.ENGLISH);

        List<Line> cover = lines(scene, Role.COATING);
        assertThat(cover).extracting(Line::weight).containsOnly(Weight.THICK);
        assertThat(cover.get(0).y1()).isCloseTo(ground(scene).get(2).y1(), HALF_A_POINT);
        assertThat(cover.get(0).y2())
                .isCloseTo(areas(scene).get(1).corners().get(0).y(), HALF_A_POINT);
        double face = areas(scene).get(0).corners().get(1).x();
        assertThat(cover.get(1).x2() - face).as("4 in of lap").isCloseTo(4.0 / 12 * scale(scene), HALF_A_POINT);
    }

    /** The plate beside the wall is dotted: where it stands while somebody works on the wall is its maker's to say. */
    @ParameterizedTest(name = "{0}: {1} shields")
    @CsvSource({"SHIELDED, 1", "SLOPED, 0", "UPRIGHT, 0"})
    void aShieldIsAThickUprightAtTheBankAndADottedOneAtTheWallWithStruts(Protection protection, int shields) {
        Scene scene = SectionSketch.of(SectionJob.at(8, SoilType.C, protection), SectionJob.RUBBER, Language.ENGLISH);

        List<Line> shield = lines(scene, Role.SHIELD);
        assertThat(shield.stream().filter(line -> line.weight() == Weight.THICK && line.x1() == line.x2()))
                .hasSize(shields);
        assertThat(lines(scene, Role.UNMEASURED).stream()
                        .filter(line ->
                                line.weight() == Weight.MEDIUM && line.x1() == line.x2() && line.y1() < line.y2())
                        .filter(line -> shield.stream().anyMatch(plate -> plate.y1() == line.y1())))
                .hasSize(shields);
        assertThat(shield.stream().filter(line -> line.y1() == line.y2())).hasSize(shields * 4);
    }

    /** 29 CFR 1926.651(j)(2) (T-17). */
    @Test
    void theHeapLiesTwoFeetBackFromTheEdge() {
        Scene scene = SectionSketch.of(
                SectionJob.at(5.5, SoilType.B, Protection.SLOPED), SectionJob.RUBBER, Language.ENGLISH);

        double edge = ground(scene).get(2).x1();
        Line heap = lines(scene, Role.UNMEASURED).stream()
                .filter(line -> line.x1() > edge)
                .findFirst()
                .orElseThrow();
        assertThat(heap.x1() - edge).isCloseTo(2 * scale(scene), HALF_A_POINT);
    }

    /** Jobs.site puts the floor at 93 ft and the higher end of the drain at 92.5 ft. */
    @Test
    void theFloorLiesOverTheBottomByItsLevelOverThePipesHigherEnd() {
        CrossSection section = SectionJob.at(5.5, SoilType.B, Protection.SLOPED);
        Scene scene = SectionSketch.of(section, SectionJob.RUBBER, Language.ENGLISH);

        assertThat(section.floor().orElseThrow().feet()).isBetween(0.5 + 2.0 / 12, 0.5 + 3.0 / 12);
        double bottom = areas(scene).get(1).corners().get(2).y();
        Line floor = lines(scene, Role.HOUSE).get(0);
        assertThat(bottom - floor.y1()).isCloseTo(section.floor().get().feet() * scale(scene), HALF_A_POINT);
    }

    /** What has only its usual size is dotted; a legend tells the two kinds of line apart without color. */
    @Test
    void onlyWhatWasMeasuredHasASolidOutline() {
        CrossSection measured = SectionJob.at(5.5, SoilType.B, Protection.SLOPED);
        CrossSection usual =
                SectionJob.withFooting(measured, new Footing(Length.ofInches(8), Length.ofInches(6), false));
        Scene scene = SectionSketch.of(measured, SectionJob.RUBBER, Language.ENGLISH);
        Scene unsure = SectionSketch.of(usual, SectionJob.RUBBER, Language.ENGLISH);

        assertThat(areas(scene)).extracting(Area::role).containsOnly(Role.UNMEASURED);
        assertThat(solid(scene)).as("wall's face, footing, sample").hasSize(1 + 3 + 1);
        assertThat(solid(unsure)).as("wall's face, sample").hasSize(1 + 1);
        assertThat(PlanLabels.of(scene)).extracting(Shape.Label::text).contains("Footing 8 in thick, 6 in out");
        assertThat(PlanLabels.of(unsure))
                .extracting(Shape.Label::text)
                .contains(
                        "Footing, usual size: 8 in thick, 6 in out", "measured or planned", "usual size, not measured");
        assertThat(SvgLineStyle.dash(Role.WALL)).isEmpty();
        assertThat(SvgLineStyle.dash(Role.UNMEASURED)).isNotEmpty();
        assertThat(measured.printsLike(usual)).isFalse();
    }

    private static List<Line> solid(Scene scene) {
        return lines(scene, Role.WALL);
    }

    @Test
    void noHatchLineLeavesTheBackfill() {
        Scene scene =
                SectionSketch.of(SectionJob.at(10, SoilType.C, Protection.SLOPED), SectionJob.RUBBER, Language.ENGLISH);

        Line bank = ground(scene).get(2);
        double run = (bank.x1() - bank.x2()) / (bank.y2() - bank.y1());
        List<Line> hatch = lines(scene, Role.SOIL).stream()
                .filter(line -> line.y2() < line.y1() && line.x2() < bank.x1() && line.x1() < bank.x1() - 1)
                .filter(line -> line.y1() - line.y2() > 6)
                .toList();
        assertThat(hatch).hasSizeGreaterThan(20).allSatisfy(line -> {
            assertThat(line.y2()).isGreaterThan(bank.y1() - 0.5);
            assertThat(line.x2()).isLessThan(bank.x2() + run * (bank.y2() - line.y2()) + 0.5);
        });
    }

    /** Points a foot, read off the scale bar. */
    public static double scale(Scene scene) {
        Line bar = lines(scene, Role.PLAIN).stream()
                .filter(line -> line.y1() == line.y2())
                .findFirst()
                .orElseThrow();
        String feet = PlanLabels.of(scene).stream()
                .filter(label -> Math.abs(label.x() - bar.x2() - 5) < 0.01 && Math.abs(label.y() - bar.y1() - 3) < 0.01)
                .map(Shape.Label::text)
                .findFirst()
                .orElseThrow();
        return (bar.x2() - bar.x1()) / Double.parseDouble(feet.replace(" ft", ""));
    }

    private static List<Line> ground(Scene scene) {
        return lines(scene, Role.GROUND);
    }

    private static List<Line> lines(Scene scene, Role role) {
        return scene.shapes().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .filter(line -> line.role() == role)
                .toList();
    }

    private static List<Area> areas(Scene scene) {
        return scene.shapes().stream()
                .filter(Area.class::isInstance)
                .map(Area.class::cast)
                .toList();
    }

    private static List<Dot> dots(Scene scene, Role role) {
        return scene.shapes().stream()
                .filter(Dot.class::isInstance)
                .map(Dot.class::cast)
                .filter(dot -> dot.role() == role)
                .toList();
    }
}
