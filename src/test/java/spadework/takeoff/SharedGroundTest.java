// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.takeoff.DugTogether.P;
import static spadework.takeoff.DugTogether.SEED;
import static spadework.takeoff.DugTogether.TF;
import static spadework.takeoff.DugTogether.clay;
import static spadework.takeoff.DugTogether.evaluates;
import static spadework.takeoff.DugTogether.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.Jobs;
import spadework.job.PitPlace;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.job.TeeAt;
import spadework.job.TrenchEnds;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallPlace;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Measure;

/**
 * Faces of trenches that end before one another, and the hole of a sump beside a trench, against thin
 * level slices of both, each place counted once.
 */
class SharedGroundTest {
    /** Thickness of a level slice, feet. */
    private static final double UP = 0.0003;

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    void groundBetweenTwoEndsIsDugOnce(String shown, Wall one, Wall two, Job job) {
        double both = dug(job, "A") + dug(job, "B");
        assertThat(both).isCloseTo(sliced(one, two), within(0.001 * both));
        evaluates(job);
    }

    /** Faces of 6.667 ft each at 1 to 1: from a gap of 13.333 ft on nothing is shared. */
    @ParameterizedTest(name = "gap of {0} ft: shared {1}")
    @CsvSource({"0.5, true", "13.3, true", "13.34, false", "40, false"})
    void sharedWhereTheFacesMeet(double gap, boolean shared) {
        double alone = dug(Jobs.job(wall("A", 0, 6, 6, 24, Protection.SLOPED, EndKind.OPEN)), "A");
        Job job = Jobs.job(
                wall("A", 0, 6, 6, 24, Protection.SLOPED, EndKind.OPEN),
                wall("B", 30 + gap, 6, 6, 24, Protection.SLOPED, EndKind.OPEN));
        double both = dug(job, "A") + dug(job, "B");
        assertThat(both < 2 * alone - 1e-6).isEqualTo(shared);
    }

    @ParameterizedTest(name = "{0} end: shared {1}")
    @CsvSource({"OPEN, true", "UNKNOWN, true", "RAMP, true", "SHIELDED, false", "AGAINST_SOMETHING, false"})
    void closedEndsShareNothing(EndKind kind, boolean shared) {
        Wall a = wall("A", 0, 6, 6, 24, Protection.SLOPED, kind);
        Job job = Jobs.job(a, wall("B", 34, 6, 6, 24, Protection.SLOPED, EndKind.OPEN));
        Job apart = Jobs.job(a, wall("B", 300, 6, 6, 24, Protection.SLOPED, EndKind.OPEN));
        assertThat(dug(job, "A") + dug(job, "B") < dug(apart, "A") + dug(apart, "B") - 1e-6)
                .isEqualTo(shared);
    }

    /**
     * A court 6 ft wide and 10 ft deep, trenches of 2.5 + z from their walls 5.667 ft high and stone of 1.167 ft: from
     * a height of 0.5 ft both fill it, 10 × (2 (2.5 + z) − 6) dz less than their sum. In a wide court volumes grow
     * evenly with its width, so two of those tell what 6 ft would take.
     */
    @Test
    void aNarrowCourtIsDugAndStonedOnce() {
        List<String> walls = List.of("W0", "W1", "W2", "W3", "W4", "W5", "W6", "W7");
        assertThat(notTwice(walls, Measure.DUG)).isCloseTo(266.9444 / 27, within(1e-4));
        assertThat(notTwice(walls, Measure.STONE)).isCloseTo(10 * 0.444444 / 27, within(1e-4));
    }

    /**
     * Where the drain lies in the court alone, no stone goes round its outside corners, and at its end wall the corner
     * terms are exact already: (2 (2.5 + z) − 6) × (10 − (2.5 + z)) dz from 0.5 to 1.167 ft.
     */
    @Test
    void aDrainInTheCourtAloneIsStonedOnce() {
        assertThat(notTwice(List.of("W5", "W6", "W7"), Measure.STONE)).isCloseTo(2.91358 / 27, within(1e-4));
    }

    /** How much less than the evenly grown sum a court of 6 ft takes, cubic yards. */
    private static double notTwice(List<String> drained, Measure measure) {
        double wide = court(20, drained, measure);
        double wider = court(40, drained, measure);
        return wide + (wider - wide) * (6 - 20) / 20 - court(6, drained, measure);
    }

    private static double court(double width, List<String> drained, Measure measure) {
        PlanHouse house = PlanHouse.of("17 R 40 R " + (34 + width) + " R 40 R 17 R 10 L " + width + " L 10 R");
        Job all = house.job(SoilType.B, house.walls(5));
        Job job = JobPipes.drainedAlong(all, drained);
        return job.walls().stream()
                .mapToDouble(wall -> quantity(job, measure, wall.label()))
                .sum();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pits")
    void holeBesideATrenchIsDugOnce(String shown, Job job, double away) {
        Wall wall = job.walls().get(0);
        double side = 18.0 / 12 + 2;
        double depth = 97.5 - 92.2 + 24.0 / 12 + 4.0 / 12;
        double height = wall.depthEnd().feet() + TF;
        double sum = 0;
        double step = 0.001;
        for (double down = step / 2; down < depth; down += step) {
            double over = height - down;
            double reached = over > 0 ? wall.digging().bottomWidth().feet() + out(wall, over) - away : 0;
            sum += step * side * (side - Math.max(0, Math.min(side, reached)));
        }
        assertThat(quantity(job, Measure.PIPE_TRENCH, "O1 pit")).isCloseTo(sum / 27, within(0.001 * sum / 27));
        evaluates(job);
    }

    /** Nobody measured how far off it is, or it stands in the floor inside: nothing is taken to be shared. */
    @Test
    void holeOfUnknownPlaceSharesNothing() {
        double whole = 3.5 * 3.5 * (97.5 - 92.2 + 28.0 / 12) / 27;
        assertThat(quantity(
                        pit(PitPlace.OUTSIDE, Optional.empty(), 5, Protection.SLOPED), Measure.PIPE_TRENCH, "O1 pit"))
                .isCloseTo(whole, within(1e-6));
        assertThat(quantity(
                        pit(PitPlace.OUTSIDE, Optional.of(1.0), 5, Protection.SLOPED), Measure.PIPE_TRENCH, "O1 pit"))
                .isLessThan(whole - 0.1);
        assertThat(quantity(
                        pit(PitPlace.INSIDE, Optional.of(1.0), 5, Protection.SLOPED), Measure.PIPE_TRENCH, "O1 pit"))
                .isCloseTo(3.5 * 3.5 * 28 / 12 / 27, within(1e-6));
    }

    static Stream<Arguments> pits() {
        Random random = new Random(SEED);
        return IntStream.range(0, 40).mapToObj(i -> {
            double away = i < 4 ? i : random.nextDouble() * 9;
            double deep = 3 + random.nextDouble() * 5;
            Protection kind = Protection.values()[i % 3];
            return Arguments.of(
                    String.format(Locale.ROOT, "seed %d: %.2f ft off a trench of %.2f ft, %s", SEED, away, deep, kind),
                    pit(PitPlace.OUTSIDE, Optional.of(away), deep, kind),
                    away);
        });
    }

    private static Job pit(PitPlace place, Optional<Double> away, double deep, Protection kind) {
        Job job = new WaterJob()
                .sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0)
                .teeAt(TeeAt.END)
                .build();
        Wall wall = job.walls().get(0);
        return clay(JobPipes.withOutlet(job, outlet -> JobPipes.pitAt(outlet, place, away))
                .withWall(wall(wall.label(), 0, deep, deep, 24, kind, EndKind.AGAINST_SOMETHING)));
    }

    static Stream<Arguments> pairs() {
        Random random = new Random(SEED);
        List<EndKind> kinds = List.of(EndKind.OPEN, EndKind.UNKNOWN, EndKind.RAMP);
        List<Arguments> pairs = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double gap = 0.2 + random.nextDouble() * 9;
            Protection kind = i % 3 == 2 ? Protection.BENCHED : Protection.SLOPED;
            Protection other = i % 4 == 3 ? Protection.BENCHED : Protection.SLOPED;
            boolean metric = i % 5 == 4;
            double from = metric ? Math.round((6 + gap) * 30.48) / 30.48 : 6 + gap;
            Wall one =
                    pairWall("A", 0, depth(random), depth(random), 18 + 6 * random.nextInt(3), kind, kinds.get(i % 3));
            Wall two = pairWall("B", from, depth(random), depth(random), 24, other, EndKind.OPEN);
            pairs.add(Arguments.of(
                    String.format(Locale.ROOT, "seed %d, %d: gap %.2f ft, %s and %s", SEED, i, gap, kind, other),
                    one,
                    two,
                    clay(Jobs.job(one, two))));
        }
        return pairs.stream();
    }

    private static double depth(Random random) {
        return 2.5 + random.nextDouble() * 3.5;
    }

    /** Short walls with upright outer ends, so that the ends that face one another are most of what is counted. */
    private static Wall pairWall(
            String label, double from, double start, double end, double bottom, Protection kind, EndKind facing) {
        Wall wall = placed(label, from, 6, start, end);
        boolean first = label.equals("A");
        TrenchEnds ends = new TrenchEnds(
                first ? EndKind.SHIELDED : facing, first ? facing : EndKind.SHIELDED, Optional.of(Length.ofFeet(2)));
        return wall.withDigging(new Digging(Access.MACHINE, Percent.ZERO, Length.ofInches(bottom), kind, ends));
    }

    private static Wall wall(
            String label, double from, double start, double end, double bottom, Protection kind, EndKind ends) {
        return placed(label, from, 30, start, end)
                .withDigging(new Digging(
                        Access.MACHINE,
                        Percent.ZERO,
                        Length.ofInches(bottom),
                        kind,
                        new TrenchEnds(ends, ends, Optional.of(Length.ofFeet(2)))));
    }

    private static Wall placed(String label, double from, double length, double start, double end) {
        Wall w = Jobs.wall();
        return new Wall(
                label,
                w.where(),
                new WallPlace(w.faces(), Length.ofFeet(from), Length.ofFeet(length)),
                new WallDepth(Length.ofFeet(start), Length.ofFeet(end)),
                w.footing(),
                w.surface(),
                w.openings(),
                0,
                w.digging());
    }

    private static double out(Wall wall, double over) {
        double deepest = TF + Math.max(wall.depthStart().feet(), wall.depthEnd().feet());
        return DugTogether.out(wall.digging().protection(), over, deepest);
    }

    /** Cubic yards of the places in which one of the two is dug, from level slices. */
    private static double sliced(Wall one, Wall two) {
        double deep = TF
                + Stream.of(one, two)
                        .mapToDouble(wall -> Math.max(
                                wall.depthStart().feet(), wall.depthEnd().feet()))
                        .max()
                        .orElseThrow();
        double sum = 0;
        for (double down = UP / 2 - 4; down < deep; down += UP) {
            Envelope a = level(one, down);
            Envelope b = level(two, down);
            sum += UP * (a.getArea() + b.getArea() - a.intersection(b).getArea());
        }
        return sum / 27;
    }

    /** What is dug before a wall and beyond its end so deep, along the side and out from it. */
    private static Envelope level(Wall wall, double down) {
        double over = over(wall, down);
        double start = TF + wall.depthStart().feet();
        double end = TF + wall.depthEnd().feet();
        if (over <= 0 || over >= Math.max(start, end)) {
            return new Envelope();
        }
        boolean first = wall.label().equals("A");
        double share = (over - start) / (end - start);
        double from = start > over ? 0 : share;
        double to = end > over ? 1 : share;
        double facing = first ? end : start;
        boolean ramp = wall.digging().ends().at(first) == EndKind.RAMP;
        double beyond = over >= facing ? 0 : ramp ? 2 * over : out(wall, over);
        double near = wall.from().feet() + from * wall.length().feet() - (first ? 0 : beyond);
        double far = wall.from().feet() + to * wall.length().feet() + (first ? beyond : 0);
        return new Envelope(
                near, far, over < TF ? P : 0, P + wall.digging().bottomWidth().feet() + out(wall, over));
    }

    /** Over the level bottom, for a depth under the ground between the two ends. */
    private static double over(Wall wall, double down) {
        Length facing = wall.label().equals("A") ? wall.depthEnd() : wall.depthStart();
        return TF + facing.feet() - down;
    }

    private static double dug(Job job, String wall) {
        return quantity(job, Measure.DUG, wall);
    }
}
