// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.water.FormulaInputs.feet;
import static spadework.water.FormulaInputs.ratio;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.job.Jobs;
import spadework.job.Texture;
import spadework.measure.Unit;
import spadework.water.flow.Darcy;
import spadework.working.Worked;

/** Groundwater: always a range. */
class SeepageInflowTest {

    /** Civil engineering exam problem (W-16): 10 cm³/min, 50 cm long, 10 cm across, head 75 cm: K 0.085 cm/min. */
    @Test
    void darcy() {
        double forOne = Darcy.flow(ratio("K", 1), ratio("i", 75.0 / 50), ratio("A", Math.PI * 25), Unit.NONE)
                .number();
        assertThat(10 / forOne).isCloseTo(0.085, within(0.0005));
    }

    /** H-26, H-27 (centimeters, 2.54 an inch) and H-28; the least and the most of each texture. */
    @ParameterizedTest(name = "{0}: {1} to {2} in/h")
    @CsvSource(textBlock = """
            SAND,            4.26,  10.543
            LOAMY_SAND,      1.726,  3.81
            SANDY_LOAM,      0.628,  1.98
            LOAM,            0.198,  0.61
            SILT_LOAM,       0.299,  0.63
            SANDY_CLAY_LOAM, 0.14,   0.44
            CLAY_LOAM,       0.134,  0.17
            SILTY_CLAY,      0.06,   0.158
            UNKNOWN,         0.06,  10.543
            FILL,            0.06,  10.543
            """)
    void permeabilityIsTheSpreadOfTheTables(Texture texture, double low, double high) {
        assertThat(Permeability.of(texture).low()).isCloseTo(low, within(0.001));
        assertThat(Permeability.of(texture).high()).isCloseTo(high, within(0.001));
    }

    @ParameterizedTest
    @EnumSource
    void everyTextureHasARangeAndItsSource(Texture texture) {
        Range range = SeepageInflow.perFoot(texture, feet("H", 6));
        assertThat(range.low().number()).isPositive().isLessThan(range.high().number());
        assertThat(Permeability.of(texture).source()).isNotBlank();
    }

    /**
     * Dupuit's closed form, q = K (h1² − h2²) ÷ (2 L) (H-32): the high end with h1 = L = H, the low with H ÷ 2 and
     * 4 H.
     */
    @ParameterizedTest(name = "loam, {0} ft deep")
    @CsvSource({"3", "6", "9.5"})
    void dupuitGivesTheSame(double depth) {
        Range range = SeepageInflow.perFoot(Texture.LOAM, feet("H", depth));
        assertThat(range.high().number()).isCloseTo(dupuit(0.61, depth, depth), within(1e-9));
        double low = 0.502 / 2.54;
        assertThat(range.low().number()).isCloseTo(dupuit(low, depth / 2, 4 * depth), within(1e-9));
    }

    private static double dupuit(double inchesAnHour, double standing, double reach) {
        return inchesAnHour / 12 * standing * standing / (2 * reach) * 7.48052 / 60;
    }

    /**
     * The ditch on an impervious floor, q L² = 4 K h² (H-31), counts rain on the way: one side of ditches four depths
     * apart takes just our high end.
     */
    @ParameterizedTest(name = "loam, {0} ft deep")
    @CsvSource({"3", "6", "9.5"})
    void ditchesFourDepthsApartTakeTheHighEnd(double depth) {
        double k = 0.61 / 12;
        double spacing = 4 * depth;
        double rain = 4 * k * depth * depth / (spacing * spacing);
        double oneSide = rain * spacing / 2 * 7.48052 / 60;
        assertThat(SeepageInflow.perFoot(Texture.LOAM, feet("H", depth)).high().number())
                .isCloseTo(oneSide, within(1e-9));
    }

    @Test
    void wallTakesItsLengthTimes() {
        Worked wall = SeepageInflow.intoDrain(Jobs.job(), Jobs.wall()).high();
        double perFoot = SeepageInflow.perFoot(Texture.LOAM, feet("H", 5 + 8.0 / 12))
                .high()
                .number();
        assertThat(wall.number()).isCloseTo(40 * perFoot, within(1e-9));
    }
}
