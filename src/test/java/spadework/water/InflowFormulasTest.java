// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.water.FormulaInputs.cfs;
import static spadework.water.FormulaInputs.gpm;
import static spadework.water.FormulaInputs.in;
import static spadework.water.FormulaInputs.ratio;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.Unit;
import spadework.water.flow.Flow;
import spadework.water.flow.Rational;
import spadework.water.flow.Roof;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Roof water, runoff and drainage against published examples, and their factors against a units library. */
class InflowFormulasTest {
    private static final javax.measure.Unit<Length> INCH = Units.METRE.multiply(0.0254);
    private static final javax.measure.Unit<Length> FOOT = Units.METRE.multiply(0.3048);
    private static final javax.measure.Unit<Volume> GALLON =
            INCH.pow(3).asType(Volume.class).multiply(231);
    private static final javax.measure.Unit<Area> SQUARE_FOOT = FOOT.pow(2).asType(Area.class);
    private static final javax.measure.Unit<?> GPM = GALLON.divide(Units.MINUTE);
    private static final javax.measure.Unit<?> CFS = FOOT.pow(3).divide(Units.SECOND);

    /** International Plumbing Code 2012 roof factor, worked in a plumbing forum (W-12): 78.2 gpm. */
    @Test
    void roofToGallons() {
        double flow = Roof.flow(in(Unit.SQUARE_FOOT, "A", 2506), in(Unit.INCH_PER_HOUR, "i", 3))
                .number();
        assertThat(flow).isCloseTo(78.2, within(0.05));
        assertThat(Roof.area(gpm("Q", flow), in(Unit.INCH_PER_HOUR, "i", 3)).number())
                .isCloseTo(2506, within(1e-6));
    }

    @Test
    void cfsToGpmByUnits() {
        double exact = factor(CFS, GPM);
        assertThat(Flow.gpm("Q", "flow", cfs("Qc", 1)).number()).isCloseTo(exact, within(0.001));
        assertThat(Flow.cfs("Qc", "flow", gpm("Q", 448.831)).number()).isCloseTo(1, within(1e-9));
    }

    /** NC State University stormwater workshop, Table 1.1 (W-06): 21.6 cfs; hydrology textbook (W-08): 146.944 cfs. */
    @ParameterizedTest(name = "C {0}, {1} in/h, {2} acres: {3} cfs")
    @CsvSource({"0.62, 6.96, 5, 21.6, 0.05", "0.4, 2.87, 128, 146.944, 1e-9"})
    void rationalMethod(double c, double rain, double acres, double flow, double tolerance) {
        assertThat(Rational.flow(ratio("C", c), in(Unit.INCH_PER_HOUR, "i", rain), in(Unit.ACRE, "A", acres))
                        .number())
                .isCloseTo(flow, within(tolerance));
    }

    /** The weighted C of W-06: 3.10 ÷ 5. */
    @Test
    void weightedRunoff() {
        assertThat(3.10 / 5).isCloseTo(0.62, within(1e-12));
    }

    /** The factor that the rational method leaves out is 1.008 (H-11), by a units library. */
    @Test
    void rationalFactorByUnits() {
        javax.measure.Unit<?> acreInchHour =
                SQUARE_FOOT.multiply(43_560).multiply(INCH).divide(Units.HOUR);
        assertThat(factor(acreInchHour, CFS)).isCloseTo(1.008, within(0.0005));
        assertThat(Rational.acres(in(Unit.SQUARE_FOOT, "A", 43_560)).number()).isEqualTo(1);
    }

    private static double factor(javax.measure.Unit<?> from, javax.measure.Unit<?> to) {
        Quantity<?> one = Quantities.getQuantity(1.0, from);
        return convert(one, to);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static double convert(Quantity one, javax.measure.Unit to) {
        return one.to(to).getValue().doubleValue();
    }
}
