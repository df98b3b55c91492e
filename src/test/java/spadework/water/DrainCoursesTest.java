// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.job.Water;
import spadework.measure.Length;
import spadework.pricebook.Books;

/**
 * A footing drain along several walls, worked out by hand. The pipe lies p + B ÷ 2 = 6 in + 12 in = 1.5 ft from the
 * wall's face, so an outside corner adds twice 1.5 ft to the walls' lengths and an inside corner takes them away.
 */
class DrainCoursesTest {
    private static final Optional<Length> NONE = Optional.empty();

    private static Optional<Length> feet(double feet) {
        return Optional.of(Length.ofFeet(feet));
    }

    private static Job job(String plan) {
        PlanHouse house = PlanHouse.of(plan);
        return house.job(SoilType.B, house.walls(5), feet(92.6), feet(92.0), feet(97.5), feet(97.5));
    }

    private static List<Course> courses(Job job) {
        return DrainCourses.of(job, Books.standard(), job.water().drains().get(0));
    }

    private static Course only(Job job) {
        assertThat(courses(job)).hasSize(1);
        return courses(job).get(0);
    }

    private static List<Double> places(Course course) {
        return course.stations().stream().map(s -> s.at().feet()).toList();
    }

    private static List<Joint> joints(Course course, int station) {
        return course.stations().get(station).joints();
    }

    @ParameterizedTest(name = "{0}: {1} ft of pipe, bend at {2} ft")
    @CsvSource({"40 R 20, 63, 41.5", "40 L 20, 57, 38.5"})
    void cornerTurnsTheCenterLine(String plan, double length, double bend) {
        Course course = only(job(plan));
        assertThat(course.length().number()).isCloseTo(length, within(1e-9));
        assertThat(places(course)).hasSize(3);
        assertThat(places(course).get(1)).isCloseTo(bend, within(1e-9));
        assertThat(places(course).get(2)).isCloseTo(length, within(1e-9));
        assertThat(joints(course, 0)).containsExactly(Joint.CLEANOUT);
        assertThat(joints(course, 1)).containsExactly(Joint.BEND);
        assertThat(joints(course, 2)).containsExactly(Joint.TEE);
    }

    /** Walls 40 + 20 + 40 + 20 and four corners of 3 ft: 132 ft; half of the closing corner lies before wall 0. */
    @Test
    void drainAllRoundSharesTheCornerAtWhichItCloses() {
        Job job = job("40 R 20 R 40 R 20 R");
        assertThat(DrainLength.of(job, job.water().drains().get(0)).number()).isCloseTo(132, within(1e-9));
        List<Station> stations = DrainGround.stations(job, job.water().drains().get(0));
        List<Double> places = stations.stream().map(s -> s.at().feet()).toList();
        double[] expected = {0, 43, 66, 109, 132};
        assertThat(places).hasSize(5);
        for (int i = 0; i < expected.length; i++) {
            assertThat(places.get(i)).isCloseTo(expected[i], within(1e-9));
        }
        assertThat(stations.get(4).joints()).isEmpty();
    }

    /** The drawing's bends are the corners between walls of the drain, no others. */
    @Test
    void cornersOfOtherWallsAreNotThisDrains() {
        Job job = job("40 R 20 R 40");
        FootingDrain d = job.water().drains().get(0);
        FootingDrain two = along(d, "W0", "W1");
        assertThat(DrainLength.corners(job, d)).hasSize(2);
        assertThat(DrainLength.corners(job, two)).hasSize(1);
        assertThat(DrainLength.of(job, two).number()).isCloseTo(63, within(1e-9));
        assertThat(DrainLength.of(job, along(d, "W0", "W2")).number()).isCloseTo(80, within(1e-9));
    }

    private static FootingDrain along(FootingDrain d, String... walls) {
        return new FootingDrain(
                d.label(),
                List.of(walls),
                d.item(),
                d.teeAt(),
                d.into(),
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
    }

    /**
     * Wall 0 is 6 ft deep where the drain starts and 5 ft at the corner, wall 1 goes from 5 ft to 4 ft. Grades 98 and
     * 96 put the footing's top at 92 at either end, so the ground lies as high over 92 as the wall is deep.
     */
    @Test
    void groundFollowsTheDepthsOverTheFooting() {
        Course course = only(two(6, 5, 5, 4, feet(98), feet(96), corner(true, false)));
        assertThat(ground(course)).containsExactly(98.0, 97.0, 96.0);
    }

    /** The top falls from 92.5 to 91.9: two thirds of the walls on, at 92.1, the ground lies at 97.1. */
    @Test
    void footingsTopLiesStraightBetweenItsEnds() {
        Course course = only(two(5, 5, 5, 5, feet(97.5), feet(96.9), corner(true, false)));
        assertThat(ground(course).get(1)).isCloseTo(92.5 - 0.6 * 40 / 60 + 5, within(1e-9));
        assertThat(ground(course).get(2)).isCloseTo(96.9, within(1e-9));
    }

    /** Where the ground was measured at one end alone the footing is taken as level; nowhere, and it is not known. */
    @Test
    void oneGradeLevelsTheFooting() {
        assertThat(ground(only(two(6, 5, 5, 4, feet(98), NONE, corner(true, false)))))
                .containsExactly(98.0, 97.0, 96.0);
        assertThat(ground(only(two(6, 5, 5, 4, NONE, feet(96), corner(true, false)))))
                .containsExactly(98.0, 97.0, 96.0);
        assertThat(only(two(6, 5, 5, 4, NONE, NONE, corner(true, false))).stations())
                .allMatch(s -> s.ground().isEmpty());
    }

    /** A wall that the drain meets at its end is passed from its end to its start. */
    @ParameterizedTest(name = "corner at the end of W0 {0}, of W1 {1}: depths {2} {3} {4}")
    @CsvSource({"true, false, 6, 5, 3", "true, true, 6, 5, 4", "false, false, 5, 6, 3", "false, true, 5, 6, 4"})
    void wallsAreTurnedAsTheirCornerSays(
            boolean firstAtEnd, boolean secondAtEnd, double in, double between, double out) {
        Job job = two(6, 5, 4, 3, NONE, NONE, corner(firstAtEnd, secondAtEnd));
        List<Leg> legs = Leg.of(job, job.water().drains().get(0));
        assertThat(legs.get(0).depthIn().feet()).isEqualTo(in);
        assertThat(legs.get(0).depthOut().feet()).isEqualTo(between);
        assertThat(legs.get(1).depthOut().feet()).isEqualTo(out);
        assertThat(legs.get(0).backward()).isEqualTo(!firstAtEnd);
        assertThat(legs.get(1).backward()).isEqualTo(secondAtEnd);
        assertThat(legs.get(0).corner()).isPresent();
        assertThat(legs.get(1).corner()).isEmpty();
    }

    /** A corner that names the later wall first joins the same walls. */
    @Test
    void cornerJoinsItsWallsInEitherOrder() {
        Corner turned = new Corner(new WallEnd("W1", false), new WallEnd("W0", true), CornerKind.OUTSIDE);
        Job job = two(6, 5, 4, 3, NONE, NONE, turned);
        List<Leg> legs = Leg.of(job, job.water().drains().get(0));
        assertThat(legs).extracting(Leg::backward).containsExactly(false, false);
        assertThat(legs.get(0).corner()).contains(turned);
    }

    private static Corner corner(boolean firstAtEnd, boolean secondAtEnd) {
        return new Corner(new WallEnd("W0", firstAtEnd), new WallEnd("W1", secondAtEnd), CornerKind.OUTSIDE);
    }

    private static Job two(
            double start, double end, double next, double last, Optional<Length> from, Optional<Length> to, Corner c) {
        PlanHouse house = PlanHouse.of("40 R 20");
        List<Wall> walls = List.of(
                PlanHouse.wall("W0", 40, start, end, 24, Protection.SLOPED),
                PlanHouse.wall("W1", 20, next, last, 24, Protection.SLOPED));
        return Jobs.withCorners(house.job(SoilType.B, walls, feet(92.6), feet(92.0), from, to), List.of(c));
    }

    private static List<Double> ground(Course course) {
        return course.stations().stream()
                .map(s -> Math.round(s.ground().orElseThrow().feet() * 1e9) / 1e9)
                .toList();
    }

    /** A cleanout at the high end and at least every 100 ft (common practice, no source). */
    @ParameterizedTest(name = "{0} ft of drain: cleanouts {1}")
    @CsvSource({"40, 1", "100, 1", "101, 2", "200, 2", "201, 3"})
    void cleanoutAtLeastEveryHundredFeet(int feet, int cleanouts) {
        Course course = only(job(Integer.toString(feet)));
        List<Double> at = course.stations().stream()
                .filter(s -> s.joints().contains(Joint.CLEANOUT))
                .map(s -> s.at().feet())
                .toList();
        assertThat(at).hasSize(cleanouts);
        for (int i = 0; i < cleanouts; i++) {
            assertThat(at.get(i)).isCloseTo((double) feet * i / cleanouts, within(1e-9));
        }
    }

    /** With its tee in the middle each side runs to it, with a cleanout at its own high end. */
    @Test
    void sidesOfATeeInTheMiddle() {
        Job job = job("40 R 20");
        FootingDrain d = job.water().drains().get(0);
        Water w = job.water();
        FootingDrain middle = new FootingDrain(
                d.label(),
                d.along(),
                d.item(),
                TeeAt.MIDDLE,
                d.into(),
                feet(92.6),
                feet(92.5),
                feet(92.0),
                d.startGrade(),
                d.endGrade());
        Job teed = job.withWater(
                new Water(List.of(middle), w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()));
        List<Course> sides = courses(teed);
        assertThat(sides).extracting(Course::label).containsExactly("D1/1", "D1/2");
        assertThat(places(sides.get(0))).containsExactly(0.0, 31.5);
        assertThat(places(sides.get(1))).containsExactly(0.0, 21.5, 31.5);
        assertThat(joints(sides.get(1), 1)).containsExactly(Joint.BEND);
        for (Course side : sides) {
            assertThat(joints(side, 0)).containsExactly(Joint.CLEANOUT);
            assertThat(side.last().joints()).containsExactly(Joint.TEE);
            assertThat(side.last().invert()).contains(Length.ofFeet(92.0));
        }
        assertThat(sides.get(0).fall().orElseThrow().start().number()).isEqualTo(92.6);
        assertThat(sides.get(1).fall().orElseThrow().start().number()).isEqualTo(92.5);
    }
}
