// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.water.FormulaInputs.feet;
import static spadework.water.FormulaInputs.gpm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Job;
import spadework.job.Seepage;
import spadework.job.Texture;
import spadework.job.WaterJob;
import spadework.measure.Unit;
import spadework.pricebook.Books;
import spadework.working.Formula;
import spadework.working.Worked;

/** What comes to a sump, and what its discharge pipe and its pump make of it. */
class SumpInflowTest {

    private static WaterJob sump() {
        return new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0);
    }

    private static Optional<Range> inflow(Job job) {
        Network network = Network.of(job, Books.standard());
        return SumpInflow.of(job, network, job.water().outlets().get(0));
    }

    private static Range tables() {
        Job job = sump().build();
        return Network.of(job, Books.standard()).arriving("O1").orElseThrow();
    }

    /** A pit is watched on one day: what was seen widens the range of the tables and never narrows it. */
    @ParameterizedTest(name = "{0} gpm seen")
    @CsvSource({"0.01", "0.4", "3.8", "60"})
    void seenInflowWidensTheRange(double seen) {
        Range range = inflow(sump().observed(seen).build()).orElseThrow();
        assertThat(range.low().number()).isEqualTo(Math.min(seen, tables().low().number()));
        assertThat(range.high().number())
                .isEqualTo(Math.max(seen, tables().high().number()));
        assertThat(range.low().formula()).isEqualTo("min(Qt, Qp)");
        assertThat(range.high().formula()).isEqualTo("max(Qt, Qp)");
    }

    @Test
    void unwatchedPitHasTheTablesAlone() {
        Job job = sump().build();
        assertThat(SumpInflow.observed(job.water().outlets().get(0))).isEmpty();
        assertThat(inflow(job).orElseThrow().high().number())
                .isEqualTo(tables().high().number());
    }

    /** A part that is not known leaves the whole unknown, whatever was seen. */
    @Test
    void unknownPartLeavesItUnknown() {
        assertThat(inflow(sump().rain(null)
                        .downspout("DS1", 400, "D1")
                        .observed(3)
                        .build()))
                .isEmpty();
    }

    /** A sump's discharge pipe takes what arrives at the sump; rain that falls on the roof does not enter it anew. */
    @Test
    void dischargePipe() {
        Network network = Network.of(sump().build(), Books.standard());
        Reach discharge = network.ofRun("O1").get(0);
        assertThat(discharge.kind()).isEqualTo(ReachKind.SUMP_DISCHARGE);
        assertThat(discharge.into()).isEmpty();
        assertThat(discharge.fall()).isEmpty();
        assertThat(discharge.length().number()).isEqualTo(40);
        assertThat(discharge.flow().own().orElseThrow().high().number()).isZero();
        assertThat(discharge.flow().inflow().orElseThrow().high().number())
                .isCloseTo(tables().high().number(), within(1e-9));
        assertThat(discharge.stations().get(1).joints()).containsExactly(Joint.OUTLET);
    }

    /** A downspout that is led into the pit is not counted with the pipe that leaves it. */
    @Test
    void dischargePipeTakesNoRoofWater() {
        Network network = Network.of(sump().downspout("DS1", 500, "O1").build(), Books.standard());
        assertThat(network.ofRun("O1").get(0).flow().own().orElseThrow().high().number())
                .isZero();
        Network dry = Network.of(sump().rain(null).downspout("DS1", 500, "O1").build(), Books.standard());
        assertThat(dry.ofRun("O1").get(0).flow().own()).isPresent();
    }

    /** An outlet to daylight has no pump and no discharge pipe, whatever length stands there. */
    @Test
    void daylightHasNoDischargePipe() {
        Job job = sump().outlet(spadework.job.OutletKind.DAYLIGHT, 91.0, 90.5).build();
        assertThat(job.water().outlets().get(0).discharge()).isPresent();
        assertThat(Network.of(job, Books.standard()).ofRun("O1")).isEmpty();
    }

    /** Only a sump has one, and only one that was measured. */
    @Test
    void noDischargePipeWithoutSumpOrLength() {
        assertThat(Network.of(new WaterJob().build(), Books.standard()).ofRun("O1"))
                .isEmpty();
        for (Double length : new Double[] {null, 0.0}) {
            Job job = new WaterJob().sump(18.0, 24.0, 8.0, length, 25.0, 12.0).build();
            assertThat(Network.of(job, Books.standard()).ofRun("O1")).isEmpty();
        }
    }

    /** Equivalent lengths (H-41): under 2 in 8, 13 and 1 ft, from 2 in 9, 17 and 2 ft; three elbows, valve, union. */
    @ParameterizedTest(name = "{0} in: 40 ft of pipe count for {1} ft")
    @CsvSource({"1.5, 78", "1.99, 78", "2, 86", "3, 86"})
    void fittingsBySize(double inches, double equivalent) {
        SumpHead head = SumpHead.of(feet("hs", 8), feet("L", 40), gpm("Q", 20), Sizes.pipe(inches, 0.01));
        assertThat(head.equivalent().number()).isCloseTo(equivalent, within(1e-9));
        double friction =
                1043.94 * Math.pow(20, 1.852) / (Math.pow(150, 1.852) * Math.pow(inches, 4.8655)) * equivalent / 100;
        assertThat(head.friction().number()).isCloseTo(friction, within(1e-9));
        assertThat(head.total().number()).isCloseTo(8 + friction, within(1e-9));
    }

    /** Nothing flows in: no cycle and no head to figure. */
    @Test
    void dryPit() {
        Job job = sump().build();
        Worked none = Worked.of("Q", "nothing", 0, Unit.GALLON_PER_MINUTE, new Formula("0", "dry"));
        SumpDesign design =
                SumpDesign.of(job, Books.standard(), job.water().outlets().get(0), Range.of(none));
        assertThat(design.needed().number()).isZero();
        assertThat(design.head()).isEmpty();
        assertThat(design.shortestCycle()).isEmpty();
        assertThat(design.pump().number()).isEqualTo(25);
    }

    /** 18 in by 12 in of drawdown hold 13.2 gal (H-40). At 10 gpm in and 25 out: 13.22 ÷ 10 + 13.22 ÷ 15 = 2.2 min. */
    @Test
    void cycleUnderHalfThePump() {
        Worked storage = SumpDesign.storage(
                SumpDesign.gallonsPerInch(FormulaInputs.inches("d", 18)), FormulaInputs.inches("b", 24));
        assertThat(storage.number()).isCloseTo(13.2, within(0.05));
        double cycle = SumpDesign.shortestCycle(storage, gpm("Qi", 10), gpm("Qp", 25))
                .orElseThrow()
                .number();
        assertThat(cycle).isCloseTo(2.2, within(0.05));
    }

    /** What flows in adds up; of nothing that is a plain 0. */
    @Test
    void rangesAdd() {
        Worked one = Worked.of("Q", "one", 1, Unit.GALLON_PER_MINUTE, new Formula("1", "test"));
        Worked three = Worked.of("Q", "three", 3, Unit.GALLON_PER_MINUTE, new Formula("3", "test"));
        Range sum = Range.sum("Q", "sum", List.of(new Range(one, three), Range.of(three), new Range(one, one)));
        assertThat(sum.low().number()).isEqualTo(5);
        assertThat(sum.high().number()).isEqualTo(7);
        assertThat(sum.low().formula()).isEqualTo("Q1 + Q2 + Q3");
        assertThat(Range.sum("Q", "none", List.of()).high().formula()).isEqualTo("0");
        assertThat(Range.sum("Q", "none", List.of()).high().number()).isZero();
    }

    /**
     * H-26 to H-28: tables of loam stay under 1 in/h, those of sand do not. Water that runs freely out of slow soil
     * comes by another way, so the range then reaches to the most of every texture, 26.779 cm/h = 10.54 in/h.
     */
    @ParameterizedTest(name = "{0}, {1}: beyond the tables {2}, up to {3} in/h")
    @CsvSource({
        "LOAM, FREE, true, 10.543",
        "LOAM, DAMP, false, 0.61",
        "LOAM, NONE, false, 0.61",
        "LOAM, UNKNOWN, false, 0.61",
        "CLAY, FREE, true, 10.543",
        "SAND, FREE, false, 10.543",
        "SANDY_LOAM, FREE, false, 1.98"
    })
    void freeWaterOutOfSlowSoil(Texture texture, Seepage seepage, boolean beyond, double high) {
        assertThat(Permeability.isBeyondTables(texture, seepage)).isEqualTo(beyond);
        Permeability taken = Permeability.of(texture, seepage);
        assertThat(taken.high()).isCloseTo(high, within(0.001));
        assertThat(taken.low()).isEqualTo(Permeability.of(texture).low());
        assertThat(taken.source().startsWith("water runs freely")).isEqualTo(beyond);
    }

    /** H-26 and H-27: gravel from sand by ROSETTA, 26.779 cm/h; the rest by what stands beside it. */
    @ParameterizedTest(name = "{0}: {1} to {2} in/h")
    @CsvSource({"GRAVEL, 10.543, 140", "SILTY_CLAY_LOAM, 0.06, 0.22", "CLAY, 0.06, 0.242"})
    void permeabilityOfTheOtherTextures(Texture texture, double low, double high) {
        assertThat(Permeability.of(texture).low()).isCloseTo(low, within(0.001));
        assertThat(Permeability.of(texture).high()).isCloseTo(high, within(0.001));
    }
}
