// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.takeoff.DugTogether.P;
import static spadework.takeoff.DugTogether.SEED;
import static spadework.takeoff.DugTogether.TF;
import static spadework.takeoff.DugTogether.clay;
import static spadework.takeoff.DugTogether.evaluates;
import static spadework.takeoff.DugTogether.out;
import static spadework.takeoff.DugTogether.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.Jobs;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.SolidRun;
import spadework.job.TeeAt;
import spadework.job.TrenchEnds;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Measure;

/**
 * The first feet of a main or of a discharge pipe lie in ground that is dug already: what is left is compared with thin
 * slices of the pipe's trench, in which each place is asked whether wall's trench or hole hold it.
 */
class RunInTrenchTest {
    private static final double B = 2;
    private static final double LENGTH = 40;

    private static Wall wall(double start, double end, Protection kind) {
        Wall wall = Jobs.wall();
        return new Wall(
                        wall.label(),
                        wall.where(),
                        wall.place(),
                        new WallDepth(Length.ofFeet(start), Length.ofFeet(end)),
                        wall.footing(),
                        wall.surface(),
                        List.of(),
                        0,
                        wall.digging())
                .withDigging(new Digging(
                        Access.MACHINE,
                        Percent.ZERO,
                        Length.ofFeet(B),
                        kind,
                        new TrenchEnds(EndKind.SHIELDED, EndKind.SHIELDED, Optional.empty())));
    }

    private static Job main(Wall wall, TeeAt tee, SolidRun run) {
        return clay(JobPipes.withMains(
                        new WaterJob().teeAt(tee).drainGrade(null, null).build(), run)
                .withWall(wall));
    }

    /** Cubic yards of a run's trench at places that nothing else holds; what is dug deep down is open at grade. */
    private static double sliced(
            double length, double width, double from, double to, boolean sloped, DoubleBinaryOperator dugAlready) {
        int along = 8000;
        double down = 0.01;
        double sum = 0;
        for (int i = 0; i < along; i++) {
            double at = length * (i + 0.5) / along;
            double depth = from + (to - from) * (i + 0.5) / along;
            boolean laidBack = sloped && depth >= 5;
            int cuts = (int) Math.ceil(depth / down);
            boolean open = dugAlready.applyAsDouble(at, 1e-9) <= 0;
            for (int k = 0; !open && k < cuts; k++) {
                double d = depth * (k + 0.5) / cuts;
                double wide = width + (laidBack ? 2 * (depth - d) : 0);
                sum += dugAlready.applyAsDouble(at, d) > 0 ? 0 : wide * depth / cuts * length / along;
            }
            if (open) {
                sum += (width * depth + (laidBack ? depth * depth : 0)) * length / along;
            }
        }
        return sum / 27;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mains")
    void mainIsDugFromTheBankOn(String shown, Wall wall, TeeAt tee, double width, double from, double to) {
        Job job = main(wall, tee, JobPipes.run("M1", LENGTH, size(width, 3), from, to));
        double deep = switch (tee) {
            case START -> wall.depthStart().feet();
            case END -> wall.depthEnd().feet();
            case MIDDLE -> (wall.depthStart().feet() + wall.depthEnd().feet()) / 2;
        };
        double height = deep + TF;
        Protection kind = wall.digging().protection();
        double deepest = deepest(wall);
        double expected = sliced(
                LENGTH,
                width,
                from,
                to,
                true,
                (at, d) -> d < height && at < B / 2 + out(kind, height - d, deepest) ? 1 : 0);
        double found = quantity(job, Measure.PIPE_TRENCH, "M1");
        assertThat(found).isCloseTo(expected, within(0.001 * expected + 0.002));
        double pipe = Math.PI * 4.215 * 4.215 / 4 / 144 * LENGTH / 27;
        assertThat(quantity(job, Measure.BACKFILL, "M1")).isCloseTo(found - pipe, within(1e-9));
        evaluates(job);
    }

    private static double deepest(Wall wall) {
        return TF + Math.max(wall.depthStart().feet(), wall.depthEnd().feet());
    }

    static Stream<Arguments> mains() {
        Random random = new Random(SEED);
        return IntStream.range(0, 36).mapToObj(i -> {
            Protection kind = List.of(Protection.SLOPED, Protection.BENCHED, Protection.SHIELDED)
                    .get(i % 3);
            TeeAt tee = TeeAt.values()[i % TeeAt.values().length];
            Wall wall = wall(3 + random.nextDouble() * 5, 3 + random.nextDouble() * 5, kind);
            double from = 1 + random.nextDouble() * 8;
            double to = i % 4 == 0 ? from : 1 + random.nextDouble() * 8;
            return Arguments.of(
                    String.format(
                            Locale.ROOT, "seed %d, %d: %s, tee %s, %.2f to %.2f ft", SEED, i, kind, tee, from, to),
                    wall,
                    tee,
                    1 + i % 3 * 0.5,
                    from,
                    to);
        });
    }

    /**
     * By hand: footing top 5 ft down, H 5.667 ft, bank 1 to 1, tee in the middle of a bottom of 2 ft. A main of 1 ft by
     * 3 ft leaves the trench between 1 + 2.667 ft at its own bottom and 1 + 5.667 ft at grade: 3 × (3.667 + 6.667) ÷ 2
     * = 15.5 cf of its 120 are dug already.
     */
    @Test
    void threeFeetDeepOutOfASlopedTrench() {
        Job job = main(wall(5, 5, Protection.SLOPED), TeeAt.END, JobPipes.run("M1", LENGTH, size(1, 3)));
        assertThat(quantity(job, Measure.PIPE_TRENCH, "M1")).isCloseTo((120 - 15.5) / 27, within(1e-6));
    }

    /** A main that stays within the trench is not dug at all; its pipe still takes room of the wall's fill. */
    @ParameterizedTest(name = "{0} ft long")
    @CsvSource({"0.5", "3", "3.66"})
    void shortMainWithinTheTrenchIsDugWithIt(double length) {
        Job job = main(wall(5, 5, Protection.SLOPED), TeeAt.END, JobPipes.run("M1", length, size(1, 3)));
        assertThat(quantity(job, Measure.PIPE_TRENCH, "M1")).isCloseTo(0, within(1e-9));
        assertThat(quantity(job, Measure.MAIN_PIPE, "M1")).isCloseTo(length, within(1e-9));
    }

    /** The depths of trenches grow, and what is left of the main never does. */
    @ParameterizedTest(name = "wall {0} ft deeper than 3 ft")
    @CsvSource({"0", "0.5", "1", "2", "4"})
    void deeperWallsTrenchLeavesLessOfTheMain(double more) {
        double before = quantity(
                main(wall(3 + more, 3 + more, Protection.SLOPED), TeeAt.END, JobPipes.run("M1", LENGTH, size(1, 3))),
                Measure.PIPE_TRENCH,
                "M1");
        double after = quantity(
                main(
                        wall(3.1 + more, 3.1 + more, Protection.SLOPED),
                        TeeAt.END,
                        JobPipes.run("M1", LENGTH, size(1, 3))),
                Measure.PIPE_TRENCH,
                "M1");
        assertThat(after).isLessThan(before);
    }

    private static TrenchSize size(double width, double depth) {
        return new TrenchSize(Length.ofFeet(width), Length.ofFeet(depth));
    }

    /** Downspouts stand wherever they stand: where the job does not say so, nothing is taken to be dug. */
    @Test
    void roofLineIsDugWhole() {
        Job job = clay(
                new WaterJob().roofLine("R1", 40, 95.0, 94.0, 97.0).build().withWall(wall(5, 5, Protection.SLOPED)));
        double deep = (2 + 3) / 2.0 + 2.0 / 12;
        assertThat(quantity(job, Measure.PIPE_TRENCH, "R1")).isCloseTo(40 * deep / 27, within(1e-6));
    }

    /** From the face of the wall over the footing's top: past the projection, the bottom's width and the bank. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("roofLines")
    void roofLineIsDugFromTheBankOn(String shown, Wall wall, double along, double from, double to) {
        Job job = roofLine(wall, JobPipes.run("R1", LENGTH, size(1, 2), from, to), along);
        double height = (wall.depthStart().feet() + wall.depthEnd().feet()) / 2 + TF;
        double deepest = deepest(wall);
        double expected = sliced(
                LENGTH,
                1,
                from,
                to,
                true,
                (at, d) -> d < height - TF
                                && at < along + P + B + out(wall.digging().protection(), height - d, deepest)
                        ? 1
                        : 0);
        assertThat(quantity(job, Measure.PIPE_TRENCH, "R1")).isCloseTo(expected, within(0.001 * expected + 0.002));
        evaluates(job);
    }

    static Stream<Arguments> roofLines() {
        Random random = new Random(SEED + 1);
        return IntStream.range(0, 24).mapToObj(i -> {
            Protection kind = List.of(Protection.SLOPED, Protection.BENCHED, Protection.SHIELDED)
                    .get(i % 3);
            Wall wall = wall(3 + random.nextDouble() * 5, 3 + random.nextDouble() * 5, kind);
            double along = i % 4 == 0 ? 0 : random.nextDouble() * 30;
            double from = 1 + random.nextDouble() * 4;
            double to = 1 + random.nextDouble() * 4;
            return Arguments.of(
                    String.format(
                            Locale.ROOT,
                            "seed %d, %d: %s, %.2f ft along, %.2f to %.2f ft",
                            SEED + 1,
                            i,
                            kind,
                            along,
                            from,
                            to),
                    wall,
                    along,
                    from,
                    to);
        });
    }

    private static Job roofLine(Wall wall, SolidRun line, double along) {
        return clay(JobPipes.withRoofLines(new WaterJob().build(), JobPipes.beside(line, "A", along))
                .withWall(wall));
    }

    /**
     * By hand: a main of 1 ft by 3 ft that lies 20 ft along the wall, then leaves as above: 60 cf more of its 120 are
     * dug already than the 15.5 of the one that leaves at once.
     */
    @Test
    void mainAlongTheWall() {
        SolidRun run = JobPipes.beside(JobPipes.run("M1", LENGTH, size(1, 3)), "A", 20);
        Job job = main(wall(5, 5, Protection.SLOPED), TeeAt.END, run);
        assertThat(quantity(job, Measure.PIPE_TRENCH, "M1")).isCloseTo((120 - 60 - 15.5) / 27, within(1e-6));
    }

    /** A main runs 30 ft from the middle of a trench to the middle of a basin's hole, 3 ft 6 in wide. */
    @ParameterizedTest(name = "main of {0} ft, {1} to {2} ft deep")
    @CsvSource({"30, 4, 4", "30, 3, 5.5", "9, 3, 4", "4, 3, 3", "2, 3, 3", "30, 8, 6"})
    void mainIsDugUpToTheHole(double length, double from, double to) {
        Wall wall = wall(5, 5, Protection.SLOPED);
        Job job = clay(JobPipes.withMains(
                        JobPipes.withOutlet(
                                JobPipes.withDrains(
                                        new WaterJob()
                                                .sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0)
                                                .build(),
                                        new WaterJob()
                                                .drainGrade(null, null)
                                                .build()
                                                .water()
                                                .drains()),
                                outlet -> JobPipes.pitAt(outlet, PitPlace.OUTSIDE, Optional.empty())),
                        JobPipes.run("M1", length, size(1, 3), from, to))
                .withWall(wall));
        double height = 5 + TF;
        double half = 1.75;
        double hole = to - 2.0 / 12 + 24.0 / 12 + 4.0 / 12;
        double expected = sliced(
                length,
                1,
                from,
                to,
                true,
                (at, d) -> (d < height && at < B / 2 + height - d) || (d < hole && at > length - half) ? 1 : 0);
        assertThat(quantity(job, Measure.PIPE_TRENCH, "M1")).isCloseTo(expected, within(0.001 * expected + 0.002));
        double away = Math.max(0, B / 2 + length - half);
        double sum = 0;
        for (double d = 0.0005; d < hole; d += 0.001) {
            double reached = d < height ? B + height - d - away : 0;
            sum += 0.001 * 2 * half * (2 * half - Math.max(0, Math.min(2 * half, reached)));
        }
        assertThat(quantity(job, Measure.PIPE_TRENCH, "O1 pit")).isCloseTo(sum / 27, within(0.001 * sum / 27));
        evaluates(job);
    }

    /** The discharge pipe's trench is 12 in wide and 18 in deep; the hole is 18 in + 2 × 12 in wide. */
    @ParameterizedTest(name = "{0}, {1} ft off")
    @CsvSource({"INSIDE, ", "OUTSIDE, ", "OUTSIDE, 0", "OUTSIDE, 2", "OUTSIDE, 4.5", "OUTSIDE, 12", "UNKNOWN, 3"})
    void dischargeIsDugFromHoleOrBankOn(PitPlace place, Double away) {
        Job job = sump(place, Optional.ofNullable(away));
        double height = 6 + TF;
        double half = (1.5 + 2) / 2;
        double expected = sliced(30, 1, 1.5, 1.5, false, (at, d) -> {
            double reach = P + B + height - d;
            if (place == PitPlace.INSIDE) {
                return at < reach ? 1 : 0;
            }
            boolean hole = at < half;
            boolean trench = away != null && P + away + half + at < reach;
            return hole || trench ? 1 : 0;
        });
        assertThat(quantity(job, Measure.PIPE_TRENCH, "O1 discharge")).isCloseTo(expected, within(0.001 * expected));
        evaluates(job);
    }

    private static Job sump(PitPlace place, Optional<Double> away) {
        Job job = new WaterJob()
                .sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0)
                .teeAt(TeeAt.END)
                .build();
        return clay(JobPipes.withOutlet(job, outlet -> JobPipes.pitAt(outlet, place, away))
                .withWall(wall(6, 6, Protection.SLOPED)));
    }
}
