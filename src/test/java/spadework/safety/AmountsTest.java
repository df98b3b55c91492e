// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.Unit;
import spadework.working.Given;

/** Figures of findings are rounded so that whoever does what is asked has done enough. */
class AmountsTest {

    /** What is missing goes up to the next half inch, a figure that is one already stays. */
    @ParameterizedTest(name = "{0} ft: {1}")
    @CsvSource({"0.001, ½ in", "0.0417, 1 in", "0.5, 6 in", "0.50000001, 6 in", "0.51, 6½ in", "1, 1 ft"})
    void missingLengthIsRoundedUp(double feet, String text) {
        assertThat(Amounts.feetUp(feet)).isEqualTo(text);
    }

    /** 1/8 in a foot is 1.042%: asked for as 1.05%. */
    @ParameterizedTest(name = "{0}: {1}, up {2}")
    @CsvSource({"0.0104167, 1.04%, 1.05%", "0.04, 4.00%, 4.00%", "0.005, 0.50%, 0.50%"})
    void slopeThatIsAskedForIsRoundedUp(double ratio, String plain, String up) {
        assertThat(Amounts.slope(ratio)).isEqualTo(plain);
        assertThat(Amounts.slopeUp(ratio)).isEqualTo(up);
    }

    @ParameterizedTest(name = "{0}: down {1}, up {2}, plain {3}")
    @CsvSource({
        "91.839, 91.83 ft, 91.84 ft, 91.84 ft",
        "91.831, 91.83 ft, 91.84 ft, 91.83 ft",
        "91.83, 91.83 ft, 91.83 ft, 91.83 ft",
        "92, 92.00 ft, 92.00 ft, 92.00 ft"
    })
    void levelsAreRoundedTheSafeWay(double feet, String down, String up, String plain) {
        assertThat(Amounts.levelDown(feet)).isEqualTo(down);
        assertThat(Amounts.levelUp(feet)).isEqualTo(up);
        assertThat(Amounts.level(feet)).isEqualTo(plain);
    }

    @ParameterizedTest
    @CsvSource({"5.11, 5.2 in", "5.2, 5.2 in", "5, 5.0 in"})
    void pipeThatIsAskedForIsRoundedUp(double inches, String text) {
        assertThat(Amounts.inchesUp(inches)).isEqualTo(text);
    }

    /** A flow that would print as nothing is said to be under what is printed; none at all is none. */
    @ParameterizedTest
    @CsvSource({"0.04, under 0.05 gpm", "0.05, 0.1 gpm", "12.44, 12.4 gpm", "0, 0.0 gpm"})
    void smallFlowIsNotNothing(double gpm, String text) {
        assertThat(Amounts.of(Given.of("Q", "flow", gpm, Unit.GALLON_PER_MINUTE, "test")))
                .isEqualTo(text);
    }

    @Test
    void shareIsAWholePercent() {
        assertThat(Amounts.share(Given.of("u", "share", 49.6, Unit.PERCENT, "test")))
                .isEqualTo("50%");
        assertThat(Amounts.feet(5.5)).isEqualTo("5 ft 6 in");
    }
}
