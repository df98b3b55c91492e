// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import spadework.job.Jobs;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.job.TeeAt;
import spadework.job.Texture;
import spadework.job.TrenchEnds;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.Water;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;
import spadework.working.Recomputed;
import spadework.working.Worked;

/**
 * The first feet of a main or of a discharge pipe lie in ground that is dug already: what is left is compared with thin
 * slices of the pipe's trench, in which each place is asked whether wall's trench or hole hold it.
 */
class RunInTrenchTest {
    private static final long SEED = 20261128;
    private static final double TF = 8.0 / 12;
    private static final double P = 0.5;
    private static final double B = 2;
    private static final double LENGTH = 40;

    private static double of(Job job, Measure measure, String label) {
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity ->
                        quantity.measure() == measure && quantity.label().equals(label))
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

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

    private static Job on(Job job, Wall wall) {
        return job.withSite(Jobs.with(job.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.B)))
                .withWall(wall);
    }

    private static Job main(Wall wall, TeeAt tee, double length, TrenchSize size, Optional<double[]> depths) {
        Job job = new WaterJob().teeAt(tee).build();
        Water w = job.water();
        SolidRun run = new SolidRun(
                "M1",
                Length.ofFeet(length),
                Optional.empty(),
                size,
                0,
                "O1",
                Optional.of(Length.ofFeet(92)).filter(any -> depths.isPresent()),
                Optional.of(Length.ofFeet(91)).filter(any -> depths.isPresent()),
                depths.map(both -> Length.ofFeet(92 - 2.0 / 12 + both[0])),
                depths.map(both -> Length.ofFeet(91 - 2.0 / 12 + both[1])));
        return on(
                job.withWater(new Water(
                        w.drains(), List.of(run), w.roofLines(), w.downspouts(), w.outlets(), w.candidates())),
                wall);
    }

    /** How far the bank of a wall's trench stands out so high over its bottom; benches as 29 CFR 1926 App. B draws. */
    private static double out(Protection kind, double over, double height) {
        return switch (kind) {
            case SLOPED -> over;
            case BENCHED -> height <= 4 || over <= 4 ? 0 : Math.min(height, Math.ceil(over / 4) * 4);
            default -> 0;
        };
    }

    /** Cubic yards of a run's trench at places that nothing else holds. */
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
            for (int k = 0; at < 12 && k < cuts; k++) {
                double d = depth * (k + 0.5) / cuts;
                double wide = width + (laidBack ? 2 * (depth - d) : 0);
                sum += dugAlready.applyAsDouble(at, d) > 0 ? 0 : wide * depth / cuts * length / along;
            }
            if (at >= 12) {
                sum += (width * depth + (laidBack ? depth * depth : 0)) * length / along;
            }
        }
        return sum / 27;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mains")
    void mainIsDugFromTheBankOn(String shown, Wall wall, TeeAt tee, double width, double from, double to) {
        Job job = main(
                wall, tee, LENGTH, new TrenchSize(Length.ofFeet(width), Length.ofFeet(3)), Optional.of(new double[] {
                    from, to
                }));
        double deep = switch (tee) {
            case START -> wall.depthStart().feet();
            case END -> wall.depthEnd().feet();
            case MIDDLE -> (wall.depthStart().feet() + wall.depthEnd().feet()) / 2;
        };
        double height = deep + TF;
        Protection kind = wall.digging().protection();
        double deepest = wall.deepestTrench().feet();
        double expected = sliced(
                LENGTH,
                width,
                from,
                to,
                true,
                (at, d) -> d < height && at < B / 2 + out(kind, height - d, deepest) ? 1 : 0);
        double found = of(job, Measure.PIPE_TRENCH, "M1");
        assertThat(found).isCloseTo(expected, within(0.001 * expected + 0.002));
        double pipe = Math.PI * 4.215 * 4.215 / 4 / 144 * LENGTH / 27;
        assertThat(of(job, Measure.BACKFILL, "M1")).isCloseTo(found - pipe, within(1e-9));
        evaluates(job);
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
        Job job = main(wall(5, 5, Protection.SLOPED), TeeAt.END, LENGTH, size(3), Optional.empty());
        assertThat(of(job, Measure.PIPE_TRENCH, "M1")).isCloseTo((120 - 15.5) / 27, within(1e-6));
    }

    /** A main that stays within the trench is not dug at all; its pipe still takes room of the wall's fill. */
    @ParameterizedTest(name = "{0} ft long")
    @CsvSource({"0.5", "3", "3.66"})
    void shortMainWithinTheTrenchIsDugWithIt(double length) {
        Job job = main(wall(5, 5, Protection.SLOPED), TeeAt.END, length, size(3), Optional.empty());
        assertThat(of(job, Measure.PIPE_TRENCH, "M1")).isCloseTo(0, within(1e-9));
        assertThat(of(job, Measure.MAIN_PIPE, "M1")).isCloseTo(length, within(1e-9));
    }

    /** The depths of trenches grow, and what is left of the main never does. */
    @ParameterizedTest(name = "wall {0} ft deeper than 3 ft")
    @CsvSource({"0", "0.5", "1", "2", "4"})
    void deeperWallsTrenchLeavesLessOfTheMain(double more) {
        double before = of(
                main(wall(3 + more, 3 + more, Protection.SLOPED), TeeAt.END, LENGTH, size(3), Optional.empty()),
                Measure.PIPE_TRENCH,
                "M1");
        double after = of(
                main(wall(3.1 + more, 3.1 + more, Protection.SLOPED), TeeAt.END, LENGTH, size(3), Optional.empty()),
                Measure.PIPE_TRENCH,
                "M1");
        assertThat(after).isLessThan(before);
    }

    private static TrenchSize size(double depth) {
        return new TrenchSize(Length.ofFeet(1), Length.ofFeet(depth));
    }

    /** Roof lines begin at downspouts, wherever those are: nothing of them is taken to be dug. */
    @Test
    void roofLineIsDugWhole() {
        Job job = on(new WaterJob().roofLine("R1", 40, 95.0, 94.0, 97.0).build(), wall(5, 5, Protection.SLOPED));
        double deep = (2 + 3) / 2.0 + 2.0 / 12;
        assertThat(of(job, Measure.PIPE_TRENCH, "R1")).isCloseTo(40 * deep / 27, within(1e-6));
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
        assertThat(of(job, Measure.PIPE_TRENCH, "O1 discharge")).isCloseTo(expected, within(0.001 * expected));
        evaluates(job);
    }

    private static Job sump(PitPlace place, Optional<Double> away) {
        Job job = new WaterJob()
                .sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0)
                .teeAt(TeeAt.END)
                .build();
        Outlet o = job.water().outlets().get(0);
        SumpPit p = o.pit().orElseThrow();
        SumpPit pit = new SumpPit(
                p.diameter(),
                p.depth(),
                p.lift(),
                p.pumpFlow(),
                p.pumpHead(),
                place,
                away.map(Length::ofFeet),
                p.observedInflow());
        Outlet outlet = new Outlet(
                o.label(),
                OutletKind.SUMP,
                o.what(),
                o.level(),
                o.fromHouse(),
                o.fromLotLine(),
                o.permission(),
                o.discharge(),
                o.waterLevel(),
                Optional.of(pit),
                o.dischargeTrench());
        Water w = job.water();
        return on(
                job.withWater(new Water(
                        w.drains(), w.mains(), w.roofLines(), w.downspouts(), List.of(outlet), w.candidates())),
                wall(6, 6, Protection.SLOPED));
    }

    private static void evaluates(Job job) {
        Measuring.of(job, Books.standard()).quantities().stream()
                .flatMap(quantity -> Recomputed.under(quantity.working()).stream())
                .forEach(RunInTrenchTest::evaluates);
    }

    private static void evaluates(Worked worked) {
        assertThat(Recomputed.evaluate(worked))
                .as(worked.line())
                .isCloseTo(worked.number(), within(1e-9 * Math.max(1, Math.abs(worked.number()))));
    }
}
