// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EarthVolumesTest {

    /** W-21, construction estimating textbook, Ex. 9-2: 1,000 bcy of dense clay, swell 30%, 7 cy trucks. */
    @Test
    void swellAndLoadsOfDenseClay() {
        double loose = EarthVolumes.loose(1000, 0.30);
        assertThat(loose).isCloseTo(1300, within(1e-9));
        assertThat(EarthVolumes.loads(loose, 7)).isEqualTo(186);
    }

    /** W-24, earthwork textbook problem: bank 3,400 and loose 2,700 lb/cy. */
    @Test
    void swellFromWeights() {
        assertThat(2000.0 / 3400).isCloseTo(0.59, within(0.005));
        assertThat(2000.0 / 2700).isCloseTo(0.74, within(0.005));
        double swell = EarthVolumes.swell(3400, 2700);
        assertThat(swell).isCloseTo(0.26, within(0.005));
        assertThat(EarthVolumes.loose(100, swell)).isCloseTo(126, within(0.5));
    }

    /** W-25, published excavation example: 200 × 20 × 2 ft, swell 40%. The source rounds before it multiplies. */
    @Test
    void rectangularDig() {
        double bank = 200.0 * 20 * 2 / 27;
        assertThat(bank).isCloseTo(296, within(1.0));
        assertThat(EarthVolumes.loose(bank, 0.40)).isCloseTo(414, within(1.0));
    }

    /** Published relations of bank, loose and compacted (E-08). */
    @Test
    void bankLooseAndCompacted() {
        assertThat(EarthVolumes.loose(200, 0.40)).isCloseTo(280, within(1e-9));
        assertThat(EarthVolumes.loose(100, 0.25)).isCloseTo(125, within(1e-9));
        assertThat(EarthVolumes.compacted(100, 0.12)).isCloseTo(88, within(1e-9));
        assertThat(EarthVolumes.bankFor(100, 0.12)).isCloseTo(113.6, within(0.05));
    }

    /** W-27 and W-29, state DOT construction memo, section 109, Ex. I: 0.712 cy a ton, 1.406 tons a cy. */
    @Test
    void tonsAndCubicYards() {
        double tons = 2_741_283 / 2000.0;
        assertThat(tons).isCloseTo(1370.642, within(0.0005));
        assertThat(tons * 0.712).isCloseTo(975.9, within(0.05));
        assertThat(EarthVolumes.tons(958.5, 1.406)).isCloseTo(1347.65, within(0.005));
    }

    @ParameterizedTest(name = "{0} packages needed: {1} bought ({2})")
    @CsvSource(textBlock = """
            148.9999,         149, the rest of a package is a package
            149,              149, a whole number stays
            149.0000000001,   149, noise is not a package
            149.001,          150, a real part is
            0,                0,   nothing is nothing
            0.01,             1,   a little is one
            """)
    void packagesAreWhole(double needed, double bought, String why) {
        assertThat(WholePackages.roundUp(needed)).as(why).isEqualTo(bought);
    }

    /** The same published relations read backward (E-08): W-21 and W-29 from their answers to what was given. */
    @Test
    void backFromTheAnswers() {
        assertThat(EarthVolumes.bankOf(1300, 0.30)).isCloseTo(1000, within(1e-9));
        assertThat(EarthVolumes.shrink(100, 88)).isCloseTo(0.12, within(1e-9));
        assertThat(EarthVolumes.cubicYards(1347.651, 1.406)).isCloseTo(958.5, within(1e-9));
    }
}
