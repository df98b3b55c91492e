// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import spadework.drawing.PlanLabels;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.Jobs;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.Side;
import spadework.job.Site;
import spadework.job.TestPit;
import spadework.job.TrenchEnds;
import spadework.job.Wall;
import spadework.job.WallPlace;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.place.OutlineSpot;

/**
 * The ground that is dug, as the plan draws it, against rectangles worked out by hand; a geometry library closes the
 * outlines. The house of these jobs is 60 by 30 ft.
 */
class DugGroundTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private static Wall wall(Side faces, double from, double length, double depth, Protection kind) {
        Wall w = Jobs.deep(depth);
        return new Wall(
                w.label(),
                w.where(),
                new WallPlace(faces, Length.ofFeet(from), Length.ofFeet(length)),
                w.depth(),
                w.footing(),
                w.surface(),
                List.of(),
                0,
                new Digging(
                        Access.MACHINE,
                        Percent.ZERO,
                        Length.ofFeet(2),
                        kind,
                        new TrenchEnds(EndKind.SHIELDED, EndKind.SHIELDED, Optional.empty())));
    }

    private static Job dry(Wall wall) {
        return JobPipes.withMains(JobPipes.withDrains(Jobs.job(wall), List.of()));
    }

    private static double scale(Scene plan) {
        Box house = plan.shapes().stream()
                .filter(shape -> shape instanceof Box box && box.role() == Role.HOUSE)
                .map(Box.class::cast)
                .findFirst()
                .orElseThrow();
        return house.width() / 60;
    }

    private static List<Line> lines(Scene plan, Role role) {
        double foot = plan.shapes().stream()
                .filter(shape ->
                        shape instanceof Shape.Label label && label.text().equals(PlanWords.ENGLISH.meaning("dug")))
                .mapToDouble(shape -> ((Shape.Label) shape).y())
                .findFirst()
                .orElseThrow();
        return plan.shapes().stream()
                .filter(shape -> shape instanceof Line line && line.role() == role && line.y1() < foot - 8)
                .map(Line.class::cast)
                .toList();
    }

    /** Outlines run level, upright or at the banks' angle; hatches fall to the left. */
    private static boolean isHatch(Line line) {
        return Math.abs((line.x1() + line.y1()) - (line.x2() + line.y2())) < 1e-6;
    }

    private static Geometry ground(Scene plan) {
        Polygonizer polygonizer = new Polygonizer();
        lines(plan, Role.DUG).stream()
                .filter(line -> !isHatch(line))
                .forEach(line -> polygonizer.add(GEOMETRY.createLineString(
                        new Coordinate[] {new Coordinate(line.x1(), line.y1()), new Coordinate(line.x2(), line.y2())
                        })));
        List<Geometry> found = new ArrayList<>();
        for (Object one : polygonizer.getPolygons()) {
            found.add((Geometry) one);
        }
        return GEOMETRY.createGeometryCollection(found.toArray(Geometry[]::new)).union();
    }

    /** A trench 20 ft long, 6 ft 8 in deep, 1 to 1 in Type B: 0.5 + 2 + 6.667 ft wide at grade; upright 2 ft 6 in. */
    @ParameterizedTest(name = "wall that faces {0}")
    @EnumSource(Side.class)
    void trenchAtAWallIsToScale(Side faces) {
        Scene plan = PlanSketch.of(dry(wall(faces, 5, 20, 6, Protection.SLOPED)));
        double scale = scale(plan);
        assertThat(ground(plan).getArea() / scale / scale).isCloseTo(20 * (2.5 + 6 + 8.0 / 12), within(0.05));
    }

    /** What is too narrow to be seen is drawn as wide as its drain needs. */
    @Test
    void narrowTrenchIsWidened() {
        Scene plan = PlanSketch.of(dry(wall(Side.NORTH, 5, 20, 4, Protection.UPRIGHT)));
        double scale = scale(plan);
        assertThat(2.5 * scale).isLessThan(DugShapes.LEAST_AT_WALL);
        assertThat(ground(plan).getArea()).isCloseTo(20 * scale * DugShapes.LEAST_AT_WALL, within(0.1));
    }

    /** The outline of all is one: the main leaves the trench, and no edge runs through it. */
    @Test
    void bodiesThatMeetHaveOneOutline() {
        Scene plan = PlanSketch.of(Jobs.job(wall(Side.NORTH, 5, 40, 6, Protection.SLOPED)));
        assertThat(ground(plan).getNumGeometries()).isEqualTo(1);
        double without = ground(PlanSketch.of(dry(wall(Side.NORTH, 5, 40, 6, Protection.SLOPED))))
                .getArea();
        assertThat(ground(plan).getArea()).isGreaterThan(without);
    }

    /** Every hatch lies in the ground that it marks, and words on it stay clear. */
    @Test
    void hatchesLieWithin() {
        Scene plan = PlanSketch.of(Jobs.job(wall(Side.NORTH, 5, 40, 6, Protection.SLOPED)));
        Geometry ground = ground(plan).buffer(0.01);
        List<Line> hatches =
                lines(plan, Role.DUG).stream().filter(DugGroundTest::isHatch).toList();
        assertThat(hatches).hasSizeGreaterThan(20);
        assertThat(hatches)
                .allMatch(line -> ground.covers(GEOMETRY.createLineString(
                        new Coordinate[] {new Coordinate(line.x1(), line.y1()), new Coordinate(line.x2(), line.y2())
                        })));
        assertThat(PlanLabels.faults(plan)).isEmpty();
    }

    /** The hole of a sump, the trench of its discharge pipe, and the lead that joins the hole to the wall's trench. */
    @Test
    void sumpAndDischarge() {
        WaterJob job = new WaterJob().sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0);
        Job outside =
                JobPipes.withOutlet(job.build(), outlet -> JobPipes.pitAt(outlet, PitPlace.OUTSIDE, Optional.of(3.0)));
        Geometry with = ground(PlanSketch.of(outside));
        Geometry short0 = ground(PlanSketch.of(JobPipes.withOutlet(
                new WaterJob().sump(18.0, 24.0, 8.0, null, 40.0, 20.0).build(),
                outlet -> JobPipes.pitAt(outlet, PitPlace.OUTSIDE, Optional.of(3.0)))));
        assertThat(with.getArea()).isGreaterThan(short0.getArea() + 3 * 15);
        assertThat(short0.getNumGeometries()).as("trench, lead, and hole").isEqualTo(1);
        assertThat(PlanSketch.of(outside).alternative())
                .contains("3 ft 6 in wide at sump O1", "1 ft wide along the discharge pipe of O1");
    }

    /** A sump that stands indoors is dug through the floor, and its pipe leaves through the wall. */
    @Test
    void sumpIndoors() {
        Job inside = JobPipes.withOutlet(
                new WaterJob().sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0).build(),
                outlet -> JobPipes.pitAt(outlet, PitPlace.INSIDE, Optional.of(3.0)));
        Scene plan = PlanSketch.of(inside);
        Geometry house = house(plan);
        Geometry dug = ground(plan).intersection(house);
        assertThat(dug.getArea()).as("a hole no smaller than its sign").isGreaterThanOrEqualTo(15 * 15 - 1e-6);
        assertThat(plan.shapes())
                .filteredOn(shape -> shape instanceof Box box
                        && box.role() == Role.WATER
                        && box.y() < house.getEnvelopeInternal().getMaxY())
                .as("its sign")
                .hasSize(1);
        assertThat(plan.alternative()).contains("a sump inside the house");
        assertThat(PlanLabels.faults(plan)).isEmpty();
        Scene outside = PlanSketch.of(
                JobPipes.withOutlet(inside, outlet -> JobPipes.pitAt(outlet, PitPlace.OUTSIDE, Optional.of(3.0))));
        assertThat(ground(outside).intersection(house(outside)).getArea()).isCloseTo(0, within(1e-6));
        assertThat(outside.alternative()).doesNotContain("inside the house");
    }

    private static Geometry house(Scene plan) {
        return plan.shapes().stream()
                .filter(shape -> shape instanceof Box box && box.role() == Role.HOUSE)
                .map(Box.class::cast)
                .findFirst()
                .map(box -> GEOMETRY.toGeometry(
                        new Envelope(box.x(), box.x() + box.width(), box.y(), box.y() + box.height())))
                .orElseThrow();
    }

    /** Round a house drawn elsewhere at 10 points a foot: the same trench, 20 by 0.5 + 2 + 6.667 ft. */
    @ParameterizedTest(name = "wall that faces {0}")
    @EnumSource(Side.class)
    void sameGroundRoundAHouseDrawnElsewhere(Side faces) {
        HouseGround ground = HouseGround.of(
                dry(wall(faces, 5, 20, 6, Protection.SLOPED)), new Rect(150, 150, 750, 450), new Rect(0, 0, 900, 600));
        Rectangle2D bounds = ground.dug().getBounds2D();
        double across = 9 + 2.0 / 12;
        assertThat(bounds.getWidth() * bounds.getHeight() / 100).isCloseTo(20 * across, within(0.01));
        assertThat(OutlineSpot.isAcross(faces) ? bounds.getMinX() : bounds.getMinY())
                .as("5 ft from the west or north corner")
                .isCloseTo(200, within(0.01));
    }

    /** An outlet that lies far off is drawn where there is still room for it. */
    @Test
    void outletsStayOnTheSheet() {
        HouseGround ground =
                HouseGround.of(new WaterJob().build(), new Rect(60, 60, 360, 210), new Rect(0, 0, 420, 270));
        assertThat(ground.outlets()).isNotEmpty();
        ground.outlets().values().forEach(at -> {
            assertThat(at.x()).isBetween(0.0, 420.0);
            assertThat(at.y()).isBetween(0.0, 270.0);
        });
        assertThat(ground.pipes()).isNotEmpty();
    }

    /** A pit beside a wall is drawn there; one of which nobody wrote down where it is stands in the key. */
    @ParameterizedTest(name = "beside {0}: in the key {1}")
    @CsvSource({"A, false", ", true"})
    void testPits(String wall, boolean inKey) {
        Job job = dry(wall(Side.NORTH, 5, 40, 3, Protection.UPRIGHT));
        Site s = job.site();
        TestPit pit =
                new TestPit("P1", Optional.ofNullable(wall), Length.ofFeet(4), Length.ofFeet(9), Length.ofFeet(3));
        Job dug = job.withSite(s.withTestPits(List.of(pit)));
        Scene plan = PlanSketch.of(dug);
        assertThat(PlanLabels.texts(plan).contains("P1: hole of 4 ft by 9 ft, place not written down"))
                .isEqualTo(inKey);
        double more = ground(plan).getArea() - ground(PlanSketch.of(job)).getArea();
        assertThat(more > 1).isEqualTo(!inKey);
    }

    /** Two wells before an upright trench 2 ft 6 in wide reach 3 ft out: more is open where that is seen. */
    @Test
    void wellsReachBeyondANarrowTrench() {
        Wall w = wall(Side.NORTH, 5, 20, 4, Protection.UPRIGHT);
        Wall wells = new Wall(
                w.label(), w.where(), w.place(), w.depth(), w.footing(), w.surface(), List.of(), 2, w.digging());
        Scene plan = PlanSketch.of(dry(wells));
        double scale = scale(plan);
        double out = Math.max(0, 3 * scale - DugShapes.LEAST_AT_WALL);
        assertThat(ground(plan).getArea())
                .isCloseTo(20 * scale * DugShapes.LEAST_AT_WALL + 2 * 4 * scale * out, within(0.2));
    }
}
