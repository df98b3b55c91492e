// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.water.FormulaInputs.gpm;
import static spadework.water.FormulaInputs.inches;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Job;
import spadework.job.Texture;
import spadework.job.WaterJob;
import spadework.pricebook.Books;

/** Basin, pump point and cycle. */
class SumpDesignTest {

    private static SumpDesign design(WaterJob waterJob) {
        Job job = waterJob.build();
        Network network = Network.of(job, Books.standard());
        return SumpDesign.of(
                job,
                Books.standard(),
                job.water().outlets().get(0),
                network.arriving("O1").orElseThrow());
    }

    /** Published sump sizing rule (W-17): 25 in a minute in an 18 in pit, 1 gal an inch, factor 1.5: 2,250 gph. */
    @Test
    void pumpByTheRiseInThePit() {
        var inflow = gpm("Q", 25);
        assertThat(SumpDesign.pumpRate(inflow).number() * 60).isCloseTo(2250, within(1e-9));
        var exact = gpm("Q", 25 * SumpDesign.gallonsPerInch(inches("d", 18)).number());
        assertThat(SumpDesign.pumpRate(exact).number() * 60).isCloseTo(2479, within(0.5));
    }

    /** H-40: 18 in holds 1.10 gal an inch, 24 in holds 1.96. */
    @ParameterizedTest(name = "{0} in: {1} gal an inch")
    @CsvSource({"18, 1.10", "24, 1.96"})
    void gallonsInAnInch(double diameter, double gallons) {
        assertThat(SumpDesign.gallonsPerInch(inches("d", diameter)).number()).isCloseTo(gallons, within(0.005));
    }

    /**
     * V = t q ÷ 4 (UFC 3-240-04A Table 7-1, H-37), with 10 min: 20 gpm want 50 gal where the inflow may be half of it.
     * Less inflow wants less: V ÷ 2.7731 + V ÷ 22.2269 = 10 min at 24.655 gal (H-39, by hand).
     */
    @ParameterizedTest
    @CsvSource({"20, 20, 50", "10, 20, 50", "0, 20, 50", "2.7731, 25, 24.655"})
    void storageForTheCycle(double inflow, double pump, double wanted) {
        assertThat(SumpDesign.wanted(gpm("Qi", inflow), gpm("Qp", pump)).number())
                .isCloseTo(wanted, within(0.0005));
    }

    /** H-39: cycles are shortest at half the pump's flow, T = 4 V ÷ Qp; less inflow starts it less often. */
    @Test
    void shortestCycleIsFourStoragesOverThePump() {
        SumpDesign flooded = design(new WaterJob().soil(Texture.GRAVEL).sump(18.0, 24.0, 8.0, 40.0, 100.0, 12.0));
        assertThat(flooded.inflow().high().number()).isGreaterThan(50);
        double least = 4 * flooded.storage().number() / 100;
        assertThat(flooded.shortestCycle().orElseThrow().number()).isCloseTo(least, within(1e-9));
        for (double inflow = 1; inflow < 100; inflow++) {
            double cycle =
                    flooded.storage().number() / inflow + flooded.storage().number() / (100 - inflow);
            assertThat(cycle).isGreaterThanOrEqualTo(least - 1e-9);
        }
        SumpDesign quiet = design(new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 100.0, 12.0));
        assertThat(quiet.shortestCycle().orElseThrow().number()).isGreaterThan(least);
    }

    /** Equivalent lengths of 1-1/2 in (H-41): three elbows of 8, check valve 13, union 1; 40 + 24 + 13 + 1 = 78 ft. */
    @Test
    void headIsLiftAndFriction() {
        SumpDesign design = design(new WaterJob().soil(Texture.SAND).sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0));
        SumpHead head = design.head().orElseThrow();
        assertThat(head.equivalent().number()).isCloseTo(78, within(1e-9));
        double friction = 1043.94
                * Math.pow(design.needed().number(), 1.852)
                / (Math.pow(150, 1.852) * Math.pow(1.61, 4.8655))
                * 0.78;
        assertThat(head.friction().number()).isCloseTo(friction, within(1e-9));
        assertThat(head.total().number()).isCloseTo(8 + friction, within(1e-9));
    }

    /** A basin that was not chosen is the code's least, 18 by 24 in (IRC P3303.1.2, F-33). */
    @Test
    void unchosenBasinIsTheLeastOfTheCode() {
        SumpDesign design = design(new WaterJob().sump(null, null, null, null, null, null));
        assertThat(design.storage().number()).isCloseTo(1.1016 * 12, within(0.005));
        assertThat(design.head()).isEmpty();
        assertThat(design.needed().number()).isCloseTo(design.inflow().high().number() * 1.5, within(1e-9));
    }

    /**
     * The basin that was chosen holds π × 24² ÷ 4 ÷ 231 = 1.9584 gal an inch, 15 in of them between start and stop; one
     * that nobody chose is the least of IRC P3303.1.2 (F-33), 1.1016 gal an inch and 12 in.
     */
    @ParameterizedTest(name = "{0} by {1} in: {2} gal an inch, {3} gal")
    @CsvSource({"24, 30, 1.9584, 29.376", ", , 1.1016, 13.219", "24, , 1.9584, 23.501", ", 30, 1.1016, 16.524"})
    void basinAsChosenElseTheLeast(Double diameter, Double depth, double perInch, double storage) {
        SumpDesign design = design(new WaterJob().sump(diameter, depth, 8.0, 40.0, 25.0, 12.0));
        assertThat(design.gallonsPerInch().number()).isCloseTo(perInch, within(0.0005));
        assertThat(design.storage().number()).isCloseTo(storage, within(0.005));
    }
}
