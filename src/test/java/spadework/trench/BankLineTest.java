// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Banks from the bottom up. Benches: the first stands at most 4 ft over the bottom at the trench's toe, every further
 * one lies wholly behind the slope (29 CFR 1926 Subpart P App. B figure B-1.2, T-27; OSHA Technical Manual V:2, T-28;
 * both from memory).
 */
class BankLineTest {
    private static final BankLine STEPS = new BankLine(1, 4, 9);

    @ParameterizedTest(name = "{0} ft up: {1} ft out")
    @CsvSource({"0, 0", "3.99, 0", "4, 0", "4.01, 8", "8, 8", "8.01, 9", "9, 9"})
    void stepsLieBehindTheSlope(double height, double out) {
        assertThat(STEPS.out(height)).isCloseTo(out, within(1e-9));
    }

    /** None but the first rise stands before the line of 1 to 1 from the toe. */
    @Test
    void nowhereSteeperThanTheSlope() {
        for (double height = 4.01; height <= 9; height += 0.01) {
            assertThat(STEPS.out(height)).isGreaterThanOrEqualTo(height - 1e-9);
        }
    }

    /** (8 − 4) × 8 + (9 − 8) × 9 = 41 sf; to 6 ft (6 − 4) × 8 = 16 sf; sloped 9² ÷ 2 = 40.5 sf. */
    @ParameterizedTest(name = "to {0} ft: {1} sf")
    @CsvSource({"3, 0", "4, 0", "6, 16", "8, 32", "9, 41"})
    void areaOfSteps(double height, double area) {
        assertThat(STEPS.area(height)).isCloseTo(area, within(1e-9));
        assertThat(BankLine.straight(1).area(9)).isCloseTo(40.5, within(1e-9));
    }

    @ParameterizedTest(name = "{0} ft deep: {1} steps")
    @CsvSource({"4, 0", "4.01, 1", "8, 1", "8.01, 2", "19.9, 4"})
    void stepsByDepth(double depth, int steps) {
        assertThat(new BankLine(1, 4, depth).steps()).hasSize(steps);
        assertThat(BankLine.straight(1).steps()).isEmpty();
    }

    /** At 1½ to 1 the steps end 12 ft and 13.5 ft out: 4 × 12 + 1 × 13.5 = 61.5 sf; to 6 ft 2 × 12 = 24 sf. */
    @ParameterizedTest(name = "to {0} ft: {1} ft out, {2} sf")
    @CsvSource({"4, 0, 0", "6, 12, 24", "8, 12, 48", "9, 13.5, 61.5"})
    void flatterSoilHasWiderSteps(double height, double out, double area) {
        BankLine steps = new BankLine(1.5, 4, 9);
        assertThat(steps.out(height)).isCloseTo(out, within(1e-9));
        assertThat(steps.area(height)).isCloseTo(area, within(1e-9));
    }

    @Test
    void likeIsLike() {
        assertThat(STEPS.isLike(new BankLine(1, 4, 9 + 1e-12))).isTrue();
        assertThat(STEPS.isLike(new BankLine(1, 4, 9.1))).isFalse();
        assertThat(STEPS.isLike(new BankLine(1.1, 4, 9))).isFalse();
        assertThat(STEPS.isLike(new BankLine(1, 0, 9))).isFalse();
    }
}
