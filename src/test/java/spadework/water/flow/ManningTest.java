// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.water.FormulaInputs.cfs;
import static spadework.water.FormulaInputs.feet;
import static spadework.water.FormulaInputs.pipe;
import static spadework.water.FormulaInputs.ratio;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Manning's formula against published examples and against a second way to the same number. */
class ManningTest {
    private static final double GRAVITY = 32.174;

    /** Civil engineering exam problem (W-02): 0.82 cfs. */
    @Test
    void fullPipeOfHalfAFoot() {
        assertThat(pipe(0.5, 0.05, 0.02).cfs().number()).isCloseTo(0.82, within(0.005));
    }

    /** Published Manning pipe example (W-03). Its page prints 1.49; the number follows 1.486. */
    @Test
    void fullPipeOfEightInches() {
        FullPipe full = pipe(8.0 / 12, 0.005, 0.013);
        assertThat(full.cfs().number()).isCloseTo(0.854, within(0.0005));
        assertThat(full.velocity().number()).isCloseTo(2.448, within(0.0005));
        assertThat(full.cfs().number() * 86_400 * 7.48052).isCloseTo(552_261, within(10.0));
        assertThat(full.velocity().inputs().get(2).number()).as("R").isCloseTo(0.167, within(0.0005));
        assertThat(full.cfs().inputs().get(1).number()).as("A").isCloseTo(0.349, within(0.0005));
    }

    /** Colorado DRMS permit calculation, doc 1452456 p. 72 (W-05), with its own factor 1.49. */
    @Test
    void swale() {
        double depth = 0.4;
        double area = 1.12 * depth + 1.3 * depth * depth;
        double perimeter = 1.12 + 2 * depth * Math.hypot(1, 1.3);
        assertThat(area).isCloseTo(0.66, within(0.005));
        assertThat(perimeter).isCloseTo(2.43, within(0.005));
        double v = Manning.velocity(ratio("k", 1.49), ratio("n", 0.022), feet("R", area / perimeter), ratio("S", 0.25))
                .number();
        assertThat(v).isCloseTo(14.14, within(0.02));
        assertThat(v * area).isCloseTo(9.27, within(0.01));
    }

    /**
     * 4 in pipe at 1/8 in a foot by n (engineering notes, trap 7). The roof tables of the 2012 and 2021 IPC give 78.2
     * and 115 gpm for that pipe (H-19): 47% apart, which these n explain.
     */
    @ParameterizedTest(name = "n {0}: {1} gpm")
    @CsvSource({"0.009, 126", "0.011, 103", "0.013, 87", "0.015, 76"})
    void fourInchesByRoughness(double n, double gpm) {
        assertThat(pipe(4.0 / 12, 0.125 / 12, n).gpm().number()).isCloseTo(gpm, within(0.5));
    }

    /** Back-solved n of the published roof tables (H-21, derived): 0.0145, 0.0099 and 0.015. */
    @ParameterizedTest(name = "{0} in at 1/8 in a foot, n {1}: {2} gpm")
    @CsvSource({"4, 0.0145, 78.2", "4, 0.0099, 115", "6, 0.015, 222.6"})
    void roofTablesByTheirRoughness(double inches, double n, double gpm) {
        assertThat(pipe(inches / 12, 0.125 / 12, n).gpm().number()).isCloseTo(gpm, within(gpm * 0.01));
    }

    @Test
    void codeEditionsDifferBy47Percent() {
        assertThat(115 / 78.2 - 1).isCloseTo(0.47, within(0.005));
    }

    /** Energy balance: Darcy-Weisbach with f = 8 g n² ÷ (k² R^(1/3)) loses in a length just what the pipe falls. */
    @ParameterizedTest(name = "{0} ft, slope {1}, n {2}")
    @CsvSource({"0.5, 0.05, 0.02", "0.3313, 0.0104, 0.01", "1.25, 0.002, 0.013", "0.323, 0.005, 0.02"})
    void frictionTakesJustTheFall(double inside, double slope, double n) {
        double v = pipe(inside, slope, n).velocity().number();
        double f = 8 * GRAVITY * n * n / (1.486 * 1.486 * Math.cbrt(inside / 4));
        double lostInAHundredFeet = f * 100 / inside * v * v / (2 * GRAVITY);
        assertThat(lostInAHundredFeet).isCloseTo(slope * 100, within(1e-9));
    }

    /** A root finder of a kept numerical library looks for the diameter without knowing the solved formula. */
    @ParameterizedTest(name = "{0} cfs at {1}, n {2}")
    @CsvSource({"0.1337, 0.01, 0.011", "0.854, 0.005, 0.013", "0.02, 0.0015, 0.02"})
    void diameterAndSlopeAreSolved(double flow, double slope, double n) {
        double found =
                new BrentSolver(1e-12).solve(200, d -> pipe(d, slope, n).cfs().number() - flow, 0.01, 5);
        double inside = Manning.diameter(cfs("Q", flow), ratio("S", slope), ratio("n", n))
                .number();
        assertThat(inside).isCloseTo(found, within(1e-8));
        assertThat(Manning.slope(cfs("Q", flow), feet("D", inside), ratio("n", n))
                        .number())
                .isCloseTo(slope, within(1e-9));
    }
}
