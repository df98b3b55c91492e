// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import spadework.job.Job;
import spadework.job.PlanHouse;
import spadework.job.SoilType;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;

/** A row of many bump-outs in one chain: 400 walls, every sum as exact as for one. */
class ManyWallsTest {

    /** 100 bump-outs add 100 × 6 ft of wall to a long one; their corners cancel, so soil grows with the length. */
    @Test
    void soilGrowsWithTheWallsLength() {
        double one = soil(1);
        double hundred = soil(100);
        double each = soil(2) - one;
        assertThat(hundred).isCloseTo(one + 99 * each, within(1e-6 * hundred));
    }

    private static double soil(int bumps) {
        StringBuilder plan = new StringBuilder();
        for (int i = 0; i < bumps; i++) {
            plan.append("20 L 3 R 6 R 3 L ");
        }
        PlanHouse house = PlanHouse.of(plan + "20");
        Job job = house.job(SoilType.B, house.walls(5));
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.DUG)
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }
}
