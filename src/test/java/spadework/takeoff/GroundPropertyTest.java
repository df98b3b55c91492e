// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;

/**
 * Soil, stone and backfill of whole houses against the same ground cut into slices whose areas a geometry library
 * measures. Plans are rectangles, L, T and U shapes and houses with bump-outs and courts, some measured in metric
 * units; depth, width and protection may differ from wall to wall.
 */
class GroundPropertyTest {
    private static final long SEED = 20260923;
    private static final int SLICES_A_FOOT = 12;
    private static final double TF = 8.0 / 12;
    private static final double P = 0.5;

    /** Steps of benches in Type B, the first at the toe, all others behind the slope (T-27, T-28). */
    private static final double RISE = 4;

    private static final double OD = 4.215 / 12;
    private static final GeometryFactory PLANS = new GeometryFactory();

    @ParameterizedTest(name = "{0}")
    @MethodSource("houses")
    void volumesAreThoseOfTheUnion(String shown, PlanHouse house, Job job, double slope) {
        double soil = integrate(house, job, slope, GroundPropertyTest::trench) / 27;
        double feet =
                job.walls().stream().mapToDouble(wall -> wall.length().feet()).sum();
        double pipe = Math.PI * OD * OD / 4 * feet / 27;
        double stone = integrate(house, job, slope, GroundPropertyTest::stone) / 27 - pipe;
        Sums sums = Sums.of(job);
        assertThat(sums.dug()).as("soil").isCloseTo(soil, within(0.001 * soil));
        assertThat(sums.stone()).as("stone").isCloseTo(stone, within(0.001 * stone));
        assertThat(sums.backfill())
                .as("backfill")
                .isCloseTo(soil - stone - pipe, within(0.001 * (soil - stone - pipe)));
    }

    /** More depth, more width or a flatter slope never gives less soil, stone or backfill. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("houses")
    void moreNeverGivesLess(String shown, PlanHouse house, Job job, double slope) {
        Sums before = Sums.of(job);
        Job deeper = job;
        Job wider = job;
        for (Wall wall : job.walls()) {
            deeper = deeper.withWall(wall.deeperBy(Length.ofInches(4)));
            wider = wider.withWall(PlanHouse.wall(
                    wall.label(),
                    wall.length().feet(),
                    wall.depthStart().feet(),
                    wall.depthEnd().feet(),
                    wall.digging().bottomWidth().inches() + 3,
                    wall.digging().protection()));
        }
        Job flatter = job.withSite(Jobs.with(
                job.site(),
                new Soil(job.site().soil().texture(), job.site().soil().seepage(), SoilType.C)));
        for (Job more : List.of(deeper, wider, flatter)) {
            Sums after = Sums.of(more);
            assertThat(after.dug()).isGreaterThanOrEqualTo(before.dug() - 1e-9);
            assertThat(after.stone()).isGreaterThanOrEqualTo(before.stone() - 1e-9);
            assertThat(after.backfill()).isGreaterThanOrEqualTo(before.backfill() - 1e-9);
        }
    }

    private record Sums(double dug, double stone, double backfill) {
        static Sums of(Job job) {
            Takeoff takeoff = Measuring.of(job, Books.standard());
            return new Sums(sum(takeoff, Measure.DUG), sum(takeoff, Measure.STONE), sum(takeoff, Measure.BACKFILL));
        }

        private static double sum(Takeoff takeoff, Measure measure) {
            return takeoff.quantities().stream()
                    .filter(quantity ->
                            quantity.measure() == measure && quantity.label().startsWith("W"))
                    .mapToDouble(quantity -> quantity.value().doubleValue())
                    .sum();
        }
    }

    /** Height of the ground, or of the stone, over the bottom at a share of a wall's length. */
    private interface Height {
        double at(Job job, int wall, double share);
    }

    private static double trench(Job job, int wall, double share) {
        Wall w = job.walls().get(wall);
        return TF
                + w.depthStart().feet()
                + (w.depthEnd().feet() - w.depthStart().feet()) * share;
    }

    /** 6 in over footing or pipe; the pipe falls in a straight line along its own length round the corners. */
    private static double stone(Job job, int wall, double share) {
        var drain = job.water().drains().get(0);
        if (drain.startInvert().isEmpty()) {
            return Math.max(TF + 0.5, 2.0 / 12 + OD + 0.5);
        }
        double[] at = new double[job.walls().size()];
        double passed = 0;
        double walls = 0;
        double closing = 0;
        double[] wallsAt = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = passed;
            wallsAt[i] = walls;
            Wall here = job.walls().get(i);
            Wall next = job.walls().get((i + 1) % at.length);
            double gain = (2 * P
                            + here.digging().bottomWidth().feet() / 2
                            + next.digging().bottomWidth().feet() / 2)
                    * (job.corners().get(i).kind() == spadework.job.CornerKind.OUTSIDE ? 1 : -1);
            boolean last = i == at.length - 1;
            closing = last ? gain : closing;
            passed += here.length().feet() + (last ? 0 : gain);
            walls += here.length().feet();
        }
        double total = passed + closing;
        double along = closing / 2 + at[wall] + job.walls().get(wall).length().feet() * share;
        double invert = drain.startInvert().get().feet()
                + (drain.endInvert().get().feet() - drain.startInvert().get().feet()) * along / total;
        double footingTop0 = drain.startGrade().get().feet()
                - job.walls().get(0).depthStart().feet();
        double footingTop1 = drain.endGrade().get().feet()
                - job.walls().get(at.length - 1).depthEnd().feet();
        double wallShare = (wallsAt[wall] + job.walls().get(wall).length().feet() * share) / walls;
        double bottom = footingTop0 + (footingTop1 - footingTop0) * wallShare - TF;
        double shell = (4.215 - 3.875) / 2 / 12;
        return Math.max(TF + 0.5, invert - shell - bottom + OD + 0.5);
    }

    private static double integrate(PlanHouse house, Job job, double slope, Height height) {
        double[] faces = DoubleStream.concat(
                        DoubleStream.of(0, TF, TF + 0.5, 2.0 / 12 + OD + 0.5, RISE, 2 * RISE),
                        IntStream.range(0, job.walls().size())
                                .boxed()
                                .flatMapToDouble(i -> DoubleStream.of(height.at(job, i, 0), height.at(job, i, 1))))
                .sorted()
                .toArray();
        DoubleUnaryOperator area = z -> area(house, job, slope, height, z);
        double sum = 0;
        for (int i = 1; i < faces.length; i++) {
            sum += faces[i] > faces[i - 1] + 1e-9 ? midpoints(area, faces[i - 1], faces[i]) : 0;
        }
        return sum;
    }

    private static double midpoints(DoubleUnaryOperator area, double from, double to) {
        int slices = Math.max(4, (int) ((to - from) * SLICES_A_FOOT));
        double step = (to - from) / slices;
        return IntStream.range(0, slices)
                .mapToDouble(i -> area.applyAsDouble(from + (i + 0.5) * step) * step)
                .sum();
    }

    private static double area(PlanHouse house, Job job, double slope, Height height, double z) {
        List<Coordinate> outline = new ArrayList<>(List.of(new Coordinate(0, 0)));
        List<Geometry> dug = new ArrayList<>();
        List<Geometry> footings = new ArrayList<>();
        int n = job.walls().size();
        int[][] ways = {{1, 0}, {0, -1}, {-1, 0}, {0, 1}};
        double x = 0;
        double y = 0;
        int way = 0;
        for (int i = 0; i < n; i++) {
            double length = job.walls().get(i).length().feet();
            int dx = ways[way][0];
            int dy = ways[way][1];
            double reach = reach(job.walls().get(i), slope, z);
            double from = height.at(job, i, 0) > z ? 0 : crossing(height, job, i, z);
            double to = height.at(job, i, 1) > z ? 1 : crossing(height, job, i, z);
            if (to > from) {
                dug.add(box(x, y, dx, dy, from * length, to * length, reach));
            }
            footings.add(box(x, y, dx, dy, 0, length, P));
            int next = (i + 1) % n;
            if (house.outside().get(i)) {
                double there = reach(job.walls().get(next), slope, z);
                if (Math.max(height.at(job, i, 1), height.at(job, next, 0)) > z) {
                    dug.add(box(x, y, dx, dy, length, length + there, reach));
                }
                footings.add(box(x, y, dx, dy, length, length + P, P));
            }
            x += dx * length;
            y += dy * length;
            way = (way + (house.outside().get(i) ? 1 : 3)) % 4;
            outline.add(i == n - 1 ? new Coordinate(0, 0) : new Coordinate(x, y));
        }
        assertThat(Math.hypot(x, y)).as("the plan closes").isLessThan(1e-6);
        if (dug.isEmpty()) {
            return 0;
        }
        Geometry open = UnaryUnionOp.union(dug).difference(PLANS.createPolygon(outline.toArray(Coordinate[]::new)));
        return z < TF ? open.difference(UnaryUnionOp.union(footings)).getArea() : open.getArea();
    }

    /** Share of a wall's length at which its top, which only rises or only falls, passes a height. */
    private static double crossing(Height height, Job job, int wall, double z) {
        boolean rises = height.at(job, wall, 1) > height.at(job, wall, 0);
        double low = 0;
        double high = 1;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            boolean above = height.at(job, wall, middle) > z;
            low = above == rises ? low : middle;
            high = above == rises ? middle : high;
        }
        boolean reached = Math.max(height.at(job, wall, 0), height.at(job, wall, 1)) > z;
        return reached ? low : rises ? 1 : 0;
    }

    private static double reach(Wall wall, double slope, double z) {
        double foot = P + wall.digging().bottomWidth().feet();
        return switch (wall.digging().protection()) {
            case SLOPED -> foot + slope * z;
            case BENCHED -> foot + (z > RISE ? slope * Math.min(Math.ceil(z / RISE) * RISE, deepest(wall)) : 0);
            case SHIELDED, UPRIGHT -> foot;
        };
    }

    private static double deepest(Wall wall) {
        return TF + Math.max(wall.depthStart().feet(), wall.depthEnd().feet());
    }

    private static Geometry box(double x, double y, int dx, int dy, double from, double to, double out) {
        Envelope box = new Envelope(new Coordinate(x + dx * from, y + dy * from));
        box.expandToInclude(x + dx * to - dy * out, y + dy * to + dx * out);
        return PLANS.toGeometry(box);
    }

    static Stream<Arguments> houses() {
        Random random = new Random(SEED);
        return IntStream.range(0, Integer.getInteger("spadework.houses", 192)).mapToObj(i -> house(random, i));
    }

    private static Arguments house(Random random, int i) {
        boolean metric = i % 4 == 3;
        double a = size(random, 14, 30, metric);
        double c = size(random, 14, 30, metric);
        double w = size(random, 3, 16, metric);
        double d = size(random, 1, 14, metric);
        double h = size(random, 24, 40, metric);
        String[] shapes = {
            "%1$s R %5$s R %1$s R %5$s R",
            "%6$s R %7$s R %3$s L %4$s R %8$s R %5$s R",
            "%1$s L %4$s R %3$s R %4$s L %2$s R %5$s R %9$s R %5$s R",
            "%1$s R %4$s L %3$s L %4$s R %2$s R %5$s R %9$s R %5$s R",
            "%1$s L %4$s R %3$s R %4$s L %2$s L %4$s R %3$s R %4$s L %1$s R %5$s R %10$s R %5$s R",
            "%1$s R %4$s L %3$s L %4$s R %2$s R %4$s L %3$s L %4$s R %1$s R %5$s R %10$s R %5$s R"
        };
        String[] names = {"rectangle", "L", "T or bump-out", "U or court", "two bump-outs", "two courts"};
        int shape = i / 4 % shapes.length;
        double wide = a + w;
        String plan = String.format(
                Locale.ROOT, shapes[shape], a, c, w, d, h, wide, h - d, wide - w, a + w + c, 2 * a + 2 * w + c);
        PlanHouse house = PlanHouse.of(plan);
        double depth = size(random, 1.5, 8, metric);
        boolean alike = i % 3 == 0;
        int n = house.feet().size();
        double[] depths = new double[n + 1];
        for (int k = 0; k < n; k++) {
            depths[k] = i % 3 == 2 ? depth + random.nextDouble() : depth;
        }
        depths[n] = depths[0];
        List<Wall> walls = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            int mixed = alike ? 2 + i / 3 % 3 : random.nextInt(6);
            Protection kind = mixed == 0 ? Protection.SHIELDED : mixed <= 2 ? Protection.BENCHED : Protection.SLOPED;
            double bottom = alike ? 24 : 18 + random.nextInt(3) * 6;
            walls.add(PlanHouse.wall("W" + k, house.feet().get(k), depths[k], depths[k + 1], bottom, kind));
        }
        double fall = random.nextDouble();
        boolean levels = random.nextBoolean();
        double start = 97 - depth - TF + 0.2 + fall;
        Job job = levels
                ? house.job(
                        SoilType.B,
                        walls,
                        Optional.of(Length.ofFeet(start)),
                        Optional.of(Length.ofFeet(start - fall)),
                        Optional.of(Length.ofFeet(97)),
                        Optional.of(Length.ofFeet(97)))
                : house.job(SoilType.B, walls);
        job = job.withSite(Jobs.with(job.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.B)));
        String shown = String.format(
                Locale.ROOT,
                "seed %d, %d: %s %s, %.2f ft deep%s",
                SEED,
                i,
                names[shape],
                plan,
                depth,
                alike ? ", all alike" : "");
        return Arguments.of(shown, house, job, 1.0);
    }

    private static double size(Random random, double from, double to, boolean metric) {
        double feet = from + random.nextDouble() * (to - from);
        return metric ? Math.round(feet * 30.48) / 30.48 : Math.round(feet * 12) / 12.0;
    }
}
