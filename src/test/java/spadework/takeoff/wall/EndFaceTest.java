// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndFaceTest {
    /** B 24 in, p 6 in, tf 8 in, s 1, H 5 ft 8 in: 3.7290 cy, integrated numerically outside the project. */
    @Test
    void checkValue() {
        assertThat(EndFace.volume(1, 2, 1, 0.5, 2.0 / 3, 17.0 / 3) / 27).isCloseTo(3.7290, within(5e-5));
    }

    @ParameterizedTest(name = "run {0}, slope {1}, height {2}")
    @CsvSource({"1, 1, 5.6667", "3, 1, 5.6667", "1.5, 1.5, 8", "1, 0, 4", "0.75, 0.75, 0.5", "1, 1, 0.6667"})
    void agreesWithNumericalIntegration(double run, double slope, double height) {
        double below = integrate(run, slope, 0, Math.min(2.0 / 3, height), 0);
        double above = integrate(run, slope, Math.min(2.0 / 3, height), height, 0.5);
        assertThat(EndFace.volume(run, 2, slope, 0.5, 2.0 / 3, height)).isCloseTo(below + above, within(1e-6));
    }

    @Test
    void anUprightEndHasNone() {
        assertThat(EndFace.volume(0, 2, 1, 0.5, 2.0 / 3, 6)).isZero();
    }

    private static double integrate(double run, double slope, double from, double to, double footing) {
        return to > from
                ? new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-10)
                        .integrate(100_000, z -> run * z * (2 + slope * z + footing), from, to)
                : 0;
    }
}
