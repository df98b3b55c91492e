// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.water.FormulaInputs.feet;
import static spadework.water.FormulaInputs.gpm;
import static spadework.water.FormulaInputs.inches;
import static spadework.water.FormulaInputs.ratio;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Friction under pressure. */
class HazenWilliamsTest {

    private static double perHundred(double flow, double c, double inside) {
        return HazenWilliams.perHundredFeet(gpm("Q", flow), ratio("C", c), inches("d", inside))
                .number();
    }

    /** Hazen-Williams friction chart, 1 in Sch 40 steel, inside 1.049 in, C 100 (W-14), complete. */
    @ParameterizedTest(name = "{0} gpm: {1} ft in 100 ft")
    @CsvSource(textBlock = """
            2,   0.59
            4,   2.13
            6,   4.52
            8,   7.69
            10, 11.63
            12, 16.30
            15, 24.64
            18, 34.54
            20, 41.99
            25, 63.47
            30, 88.97
            """)
    void chartOfOneInchSteel(double flow, double head) {
        assertThat(perHundred(flow, 100, 1.049)).isCloseTo(head, within(0.005));
    }

    /** The same chart prints 5.04 psi at 10 gpm. */
    @Test
    void pressureOfTheChart() {
        assertThat(HazenWilliams.psi(feet("h", perHundred(10, 100, 1.049))).number())
                .isCloseTo(5.04, within(0.005));
    }

    /** H-34 in its other published spelling, 4.52 Q^1.85 ÷ (C^1.85 d^4.87) psi a foot: within 1%. */
    @ParameterizedTest(name = "{0} gpm in {1} in, C {2}")
    @CsvSource({"10, 1.049, 100", "25, 1.61, 150", "40, 2.067, 140"})
    void otherSpelling(double flow, double inside, double c) {
        double psi = 4.52 * Math.pow(flow, 1.85) / (Math.pow(c, 1.85) * Math.pow(inside, 4.87)) * 100;
        double ours = HazenWilliams.psi(feet("h", perHundred(flow, c, inside))).number();
        assertThat(ours).isCloseTo(psi, within(psi * 0.01));
    }

    /** The SI form of H-34, hf = 10.67 L Q^1.852 ÷ (C^1.852 D^4.8704), in meters and m³/s: within 1%. */
    @Test
    void metricForm() {
        double q = 25 * 3.785411784e-3 / 60;
        double d = 1.61 * 0.0254;
        double meters = 10.67 * 100 * 0.3048 * Math.pow(q, 1.852) / (Math.pow(150, 1.852) * Math.pow(d, 4.8704));
        assertThat(perHundred(25, 150, 1.61)).isCloseTo(meters / 0.3048, within(meters * 0.03));
    }

    /** A published page prints 250^1.852 = 41,842 and 150^1.852 = 16,847; the true powers are 27,605 and 10,718. */
    @Test
    void wrongPowersOfAPublishedPageAreNotOurs() {
        assertThat(Math.pow(250, 1.852)).isCloseTo(27_605, within(1.0));
        assertThat(Math.pow(150, 1.852)).isCloseTo(10_718, within(1.0));
        double wrong = 1043.94 * 41_842 / (16_847 * Math.pow(4, 4.8655));
        double right = 1043.94 * 27_605 / (10_718 * Math.pow(4, 4.8655));
        assertThat(perHundred(250, 150, 4))
                .isCloseTo(right, within(right * 0.0005))
                .isNotCloseTo(wrong, within(0.01));
    }

    @Test
    void lossGrowsWithLength() {
        assertThat(HazenWilliams.loss(feet("h", 11.63), feet("L", 250)).number())
                .isCloseTo(29.075, within(1e-9));
    }
}
