// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.plan.PipeLayout;
import spadework.drawing.plan.PlanBands;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.place.DrainRoute;
import spadework.place.OutlineSpot;

class PlanGeometryTest {

    @ParameterizedTest(name = "a wall that faces {0}, {1} ft from the corner and {2} ft long")
    @CsvSource(textBlock = """
            # faces, from, length, share of the outline where it starts and ends, left or top first
            NORTH,  0,   40, 0.00, 1.00
            NORTH, 10,   20, 0.25, 0.75
            SOUTH,  4, 12.5, 0.10, 0.4125
            EAST,   0,   28, 0.00, 1.00
            EAST,   7, 10.5, 0.25, 0.625
            WEST,  14,   14, 0.50, 1.00
            """)
    void aWallLandsOnItsSideAtItsPlaceAndToScale(Side faces, double from, double length, double start, double end) {
        Scene scene = PlanSketch.of(
                PlanJob.house(40, 28).wall("A", faces, from, length).job());

        Box house = house(scene);
        Line wall = walls(scene).get(0);
        double scale = house.width() / 40;
        assertThat(house.height()).isCloseTo(28 * scale, within(0.5));
        assertThat(Math.hypot(wall.x2() - wall.x1(), wall.y2() - wall.y1())).isCloseTo(length * scale, within(0.5));
        if (OutlineSpot.isAcross(faces)) {
            double y = faces == Side.NORTH ? house.y() : house.y() + house.height();
            assertThat(List.of(wall.y1(), wall.y2())).containsOnly(y);
            assertThat(wall.x1()).isCloseTo(house.x() + start * house.width(), within(0.5));
            assertThat(wall.x2()).isCloseTo(house.x() + end * house.width(), within(0.5));
        } else {
            double x = faces == Side.WEST ? house.x() : house.x() + house.width();
            assertThat(List.of(wall.x1(), wall.x2())).containsOnly(x);
            assertThat(wall.y1()).isCloseTo(house.y() + start * house.height(), within(0.5));
            assertThat(wall.y2()).isCloseTo(house.y() + end * house.height(), within(0.5));
        }
    }

    @Test
    void theScaleBarMeasuresItsFeetOnTheHouse() {
        Scene scene =
                PlanSketch.of(PlanJob.house(40, 28).wall("A", Side.NORTH, 0, 40).job());

        double scale = house(scene).width() / 40;
        Line bar = lines(scene, Role.PLAIN).stream()
                .filter(line -> line.y1() == line.y2())
                .findFirst()
                .orElseThrow();
        double feet = (bar.x2() - bar.x1()) / scale;
        assertThat(feet).isCloseTo(Math.rint(feet), within(1e-9));
        assertThat(PlanLabels.texts(scene)).contains(Math.round(feet) + " ft");
    }

    @ParameterizedTest(name = "tee at {0}: the last arrow points {1}")
    @CsvSource({"END, 1", "START, -1"})
    void theDrainsArrowsPointTowardTheTee(TeeAt teeAt, double direction) {
        Scene scene = PlanSketch.of(PlanJob.house(40, 28)
                .wall("A", Side.NORTH, 0, 40)
                .drain("D1", teeAt, "O", "A")
                .outlet("O", OutletKind.DAYLIGHT)
                .job());

        List<Line> arrows =
                lines(scene, Role.DRAIN).stream().filter(Line::arrow).toList();
        assertThat(arrows)
                .isNotEmpty()
                .allSatisfy(
                        line -> assertThat(Math.signum(line.x2() - line.x1())).isEqualTo(direction));
    }

    @Test
    void aDrainTeedInTheMiddleFlowsThereFromBothEnds() {
        DrainRoute route = PipeLayout.of(PlanJob.house(40, 28)
                        .wall("A", Side.NORTH, 0, 40)
                        .wall("B", Side.EAST, 0, 28)
                        .drain("D1", TeeAt.MIDDLE, "O", "A", "B")
                        .outlet("O", OutletKind.SUMP)
                        .job())
                .drains()
                .get(0);

        assertThat(route.tee()).isEqualTo(new OutlineSpot(Side.NORTH, 34));
        assertThat(route.arms())
                .containsExactly(
                        List.of(new OutlineSpot(Side.NORTH, 0), new OutlineSpot(Side.NORTH, 34)),
                        List.of(
                                new OutlineSpot(Side.EAST, 28),
                                new OutlineSpot(Side.EAST, 0),
                                new OutlineSpot(Side.NORTH, 40),
                                new OutlineSpot(Side.NORTH, 34)));
    }

    @Test
    void aDrainTurnsTheCornerOutsideTheHouse() {
        Scene scene = PlanSketch.of(PlanJob.corner());

        Box house = house(scene);
        assertThat(lines(scene, Role.DRAIN)).anySatisfy(line -> {
            assertThat(line.x2()).isCloseTo(house.x() + house.width() + PlanBands.DRAIN, within(0.01));
            assertThat(line.y2()).isCloseTo(house.y() - PlanBands.DRAIN, within(0.01));
        });
    }

    @ParameterizedTest(name = "the main leaves to the {0}")
    @CsvSource({"NORTH", "EAST", "SOUTH", "WEST"})
    void theMainLeavesAwayFromTheWallOfItsDrainAndFlowsOut(Side faces) {
        Scene scene = PlanSketch.of(PlanJob.house(40, 28)
                .wall("A", faces, 0, 20)
                .drain("D1", TeeAt.END, "M1", "A")
                .main("M1", "O")
                .outlet("O", OutletKind.DAYLIGHT)
                .job());

        Box house = house(scene);
        Line last = figureLines(scene, Role.MAIN).stream()
                .filter(Line::arrow)
                .reduce((a, b) -> b)
                .orElseThrow();
        switch (faces) {
            case NORTH -> assertThat(last.y2()).isLessThan(last.y1()).isLessThan(house.y());
            case SOUTH -> assertThat(last.y2()).isGreaterThan(last.y1()).isGreaterThan(house.y() + house.height());
            case WEST -> assertThat(last.x2()).isLessThan(last.x1()).isLessThan(house.x());
            case EAST -> assertThat(last.x2()).isGreaterThan(last.x1()).isGreaterThan(house.x() + house.width());
        }
    }

    @Test
    void everyDownspoutAndTreeIsACircle() {
        Job job = PlanJob.corner();
        Scene scene = PlanSketch.of(job);

        // One more downspout stands in the row that explains the lines; a tree has its trunk in the middle.
        assertThat(dots(scene, Role.ROOF_LINE)).hasSize(job.water().downspouts().size() + 1);
        assertThat(dots(scene, Role.LIMIT)).hasSize(2);
    }

    @Test
    void noOutletIsDrawnBeyondTheLotLine() {
        Scene scene = PlanSketch.of(PlanJob.house(40, 28)
                .wall("A", Side.NORTH, 0, 40)
                .drain("D1", TeeAt.END, "M1", "A")
                .main("M1", "O")
                .outlet("O", OutletKind.APPROVED_STORM, "storm drain on the north side")
                .limit(LimitKind.PROPERTY_LINE, "A", 5)
                .limit(LimitKind.WALK, "A", 4)
                .job());

        double outlet = dots(scene, Role.WATER).get(0).y();
        List<Double> lines = lines(scene, Role.LIMIT).stream().map(Line::y1).toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).as("walk, between house and outlet").isGreaterThan(outlet);
        assertThat(lines.get(1)).as("lot line, beyond the outlet").isLessThan(outlet);
    }

    @Test
    void theSameJobGivesTheSameScene() {
        assertThat(PlanSketch.of(PlanJob.twelveWalls())).isEqualTo(PlanSketch.of(PlanJob.twelveWalls()));
    }

    private static Box house(Scene scene) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Box box && box.role() == Role.HOUSE)
                .map(Box.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static List<Line> walls(Scene scene) {
        return lines(scene, Role.WALL).stream()
                .filter(line -> line.weight() == Weight.THICK)
                .toList();
    }

    private static List<Line> lines(Scene scene, Role role) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Line line && line.role() == role)
                .map(Line.class::cast)
                .toList();
    }

    /** Without the samples in the row that explains the lines. */
    private static List<Line> figureLines(Scene scene, Role role) {
        List<Line> lines = lines(scene, role);
        return lines.subList(0, lines.size() - 1);
    }

    private static List<Dot> dots(Scene scene, Role role) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Dot dot && dot.role() == role)
                .map(Dot.class::cast)
                .toList();
    }

    /** One at each high end and at least every 100 ft: common practice, no source. */
    @ParameterizedTest(name = "{0} ft of wall, tee at {1}: cleanouts at {2} of the wall")
    @CsvSource(textBlock = """
            40,  END,    0
            40,  START,  1
            40,  MIDDLE, '0 1'
            150, END,    '0 0.5'
            250, MIDDLE, '0 0.25 1 0.75'
            """)
    void cleanoutsStandAtTheHighEndsAndOnTheWay(double feet, TeeAt teeAt, String shares) {
        Scene scene = PlanSketch.of(PlanJob.house(feet, 28)
                .wall("A", Side.NORTH, 0, feet)
                .drain("D1", teeAt, "O", "A")
                .outlet("O", OutletKind.DAYLIGHT)
                .job());

        Box house = house(scene);
        List<Double> found = scene.shapes().stream()
                .filter(shape -> shape instanceof Dot dot && dot.role() == Role.WATER && dot.y() < house.y())
                .map(shape -> (((Dot) shape).x() - house.x()) / house.width())
                .map(share -> Math.rint(share * 100) / 100)
                .toList();
        assertThat(found)
                .containsExactlyElementsOf(
                        Arrays.stream(shares.split(" ")).map(Double::valueOf).toList());
        assertThat(PlanLabels.texts(scene)).contains("Cleanout");
    }
}
