// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Jobs;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.measure.Length;

/** Rolls of sheet along walls, worked out by hand. */
class SheetRollsTest {
    private static final SheetRolls ROLL = new SheetRolls(6.5, 65);

    private static Wall wall(double feet, double depth) {
        return Jobs.deep(depth)
                .withLength(Length.ofFeet(feet))
                .withDepth(new WallDepth(Length.ofFeet(depth), Length.ofFeet(depth)));
    }

    /** Of n rolls of 65 ft, lapped by 6 in, 65 n − 0.5 (n − 1) ft hang: 65, 129.5, 194. */
    @ParameterizedTest(name = "{0} ft: {1} rolls")
    @CsvSource({"0, 0", "1, 1", "65, 1", "65.1, 2", "68, 2", "129.5, 2", "129.6, 3", "194, 3"})
    void rollsLapOverOneAnother(double feet, int rolls) {
        assertThat(ROLL.count(feet)).isEqualTo(rolls);
    }

    @ParameterizedTest(name = "20 ft of wall {0} ft high: {1} ft of roll")
    @CsvSource({"6.5, 20", "6.6, 40", "3.3, 20", "3.25, 10", "2, 6.667", "13.1, 60"})
    void highWallsTakeCoursesAndLowOnesStrips(double high, double feet) {
        assertThat(ROLL.along(List.of(wall(20, high)))).isCloseTo(feet, within(0.001));
    }

    @Test
    void wallsAddUp() {
        assertThat(ROLL.along(List.of(wall(42, 5.5), wall(26, 5.5)))).isCloseTo(68, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"6.5 ft x 65 ft roll, true", "6 ft x 100 ft roll, true", "4 x 8 ft board, false", "100 ft roll, false"})
    void sizesAreReadFromTheNameOfThePackage(String sold, boolean known) {
        assertThat(SheetRolls.of(sold).isPresent()).isEqualTo(known);
    }
}
