// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import spadework.takeoff.wall.TrenchGeometry.CornerSide;

class TrenchGeometryTest {
    private static final long SEED = 20260810;

    /** Trade arithmetic, 60 ft long, 5 ft deep, 3 ft wide: soil class alone changes the digging by 2.25. */
    @ParameterizedTest(name = "slope {0}: {1} bank cy")
    @CsvSource(textBlock = """
            # slope, bank cy
            0,    33.3
            0.75, 54.2
            1,    61.1
            1.5,  75.0
            """)
    void flatterBanksDigMore(double slope, double cubicYards) {
        double section = TrenchGeometry.section(5, 0, 0, 3, slope);
        assertThat(TrenchGeometry.prismoid(60, section, section, section) / 27).isCloseTo(cubicYards, within(0.05));
    }

    /** W-18, W-19: where the section changes in a straight line, the prismoidal rule is the average of the ends. */
    @ParameterizedTest(name = "{0} and {1} sf over {2} ft: {3} cf")
    @CsvSource(textBlock = """
            # average-end-area examples, published
            50, 150, 50,  5000
            50, 70,  100, 6000
            """)
    void averageEndAreaExamples(double start, double end, double length, double volume) {
        assertThat(TrenchGeometry.prismoid(length, start, (start + end) / 2, end))
                .isCloseTo(volume, within(1e-9));
    }

    /** Depth 4 to 6 ft, 3 ft wide, slope 1, 60 ft: exact 61.48 cy, where the average of the ends says 62.22. */
    @Test
    void averageOfTheEndsOverstatesASlopedGrade() {
        double a0 = TrenchGeometry.section(4, 0, 0, 3, 1);
        double am = TrenchGeometry.section(5, 0, 0, 3, 1);
        double a1 = TrenchGeometry.section(6, 0, 0, 3, 1);
        assertThat(TrenchGeometry.prismoid(60, a0, am, a1) / 27).isCloseTo(61.48, within(0.005));
        assertThat((a0 + a1) / 2 * 60 / 27).isCloseTo(62.22, within(0.005));
    }

    /** Square-cut outside corner, 3 ft wide, 5 ft deep, slope 1: 161.7 cf. */
    @Test
    void cornerCheckValue() {
        CornerSide side = new CornerSide(0, 3, 1);
        assertThat(TrenchGeometry.corner(5, 0, side, side)).isCloseTo(161.7, within(0.05));
    }

    /** W-01: Type B, 10 ft deep, the top of the slope lies 10 ft back (29 CFR 1926 Subpart P App. B). */
    @Test
    void setBackOfATypeBSlope() {
        double wide = TrenchGeometry.section(10, 0, 0, 3, 1) - TrenchGeometry.section(10, 0, 0, 3, 0);
        assertThat(2 * wide / 10).as("the triangle's base").isCloseTo(10, within(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("randomWalls")
    void varyingDepthAgreesWithNumericalIntegration(
            String shown, double d0, double d1, double tf, double p, double b, double s, double length) {
        double byRule = TrenchGeometry.prismoid(
                length,
                TrenchGeometry.section(d0, tf, p, b, s),
                TrenchGeometry.section((d0 + d1) / 2, tf, p, b, s),
                TrenchGeometry.section(d1, tf, p, b, s));
        double byIntegral = integrate(x -> TrenchGeometry.section(d0 + (d1 - d0) * x / length, tf, p, b, s), length);
        assertThat(byRule).isCloseTo(byIntegral, within(1e-6 * byIntegral));
    }

    /**
     * The whole dug body round a corner, cut in slices whose areas a geometry library measures, less both straight
     * runs.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("randomWalls")
    void outsideCornerAgreesWithSlicesOfTheWholeBody(
            String shown, double d0, double d1, double tf, double p, double b, double s, double length) {
        double height = d0 + tf;
        CornerSide first = new CornerSide(p, b, s);
        CornerSide second = new CornerSide(p / 2, b + 0.5, s * 0.75);
        double below = integrate(h -> slice(h, length, first, second, true), tf);
        double above = integrate(h -> slice(tf + h, length, first, second, false), d0);
        double straight = length * TrenchGeometry.section(d0, tf, first.projection(), first.width(), first.slope())
                + length * TrenchGeometry.section(d0, tf, second.projection(), second.width(), second.slope());
        double corner = TrenchGeometry.corner(height, tf, first, second);
        assertThat(corner).isCloseTo(below + above - straight, within(1e-6 * (below + above)));
    }

    /** Two trenches in a re-entrant corner: what both straight runs count twice, or count inside a footing. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("randomWalls")
    void insideCornerIsWhatTheStraightRunsOvercount(
            String shown, double d0, double d1, double tf, double p, double b, double s, double length) {
        double far = length + 60;
        CornerSide side = new CornerSide(p, b, s);
        double below = integrate(h -> insideSlice(h, far, side, true), tf);
        double above = integrate(h -> insideSlice(tf + h, far, side, false), d0);
        double straight = 2 * far * TrenchGeometry.section(d0, tf, p, b, s);
        double corner = TrenchGeometry.corner(d0 + tf, tf, side, side);
        assertThat(straight - corner).isCloseTo(below + above, within(1e-6 * straight));
    }

    private static double slice(double h, double length, CornerSide first, CornerSide second, boolean besideFooting) {
        double reach1 = first.projection() + first.width() + first.slope() * h;
        double reach2 = second.projection() + second.width() + second.slope() * h;
        Geometry outer = box(0, -length, length + reach2, reach1);
        double footing1 = besideFooting ? first.projection() : 0;
        double footing2 = besideFooting ? second.projection() : 0;
        return outer.difference(box(0, -length, length + footing2, footing1)).getArea();
    }

    /** Walls on x < 0 and y < 0 sides of a yard corner at the origin; the yard is the quadrant x > 0, y > 0. */
    private static double insideSlice(double h, double length, CornerSide side, boolean besideFooting) {
        double reach = side.projection() + side.width() + side.slope() * h;
        double footing = besideFooting ? side.projection() : 0;
        Geometry strips = box(0, 0, length, reach).union(box(0, 0, reach, length));
        Geometry footings = box(0, 0, length, footing).union(box(0, 0, footing, length));
        return footing == 0 ? strips.getArea() : strips.difference(footings).getArea();
    }

    private static Geometry box(double x0, double y0, double x1, double y1) {
        return new GeometryFactory().toGeometry(new Envelope(x0, x1, y0, y1));
    }

    private static double integrate(org.apache.commons.math3.analysis.UnivariateFunction f, double to) {
        return new IterativeLegendreGaussIntegrator(5, 1e-9, 1e-9).integrate(100_000, f, 0, to);
    }

    static Stream<Arguments> randomWalls() {
        Random random = new Random(SEED);
        return Stream.generate(() -> {
                    double d0 = 1 + random.nextDouble() * 7;
                    double d1 = 1 + random.nextDouble() * 7;
                    double tf = 0.5 + random.nextDouble();
                    double p = 0.25 + random.nextDouble() * 0.5;
                    double b = 1 + random.nextDouble() * 2;
                    double s = random.nextInt(4) * 0.5;
                    double length = 8 + random.nextDouble() * 60;
                    String shown = String.format("seed %d: d %.2f to %.2f, s %.1f", SEED, d0, d1, s);
                    return Arguments.of(shown, d0, d1, tf, p, b, s, length);
                })
                .limit(60);
    }
}
