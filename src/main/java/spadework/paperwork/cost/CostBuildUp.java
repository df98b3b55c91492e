// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import java.util.List;
import spadework.money.Dollars;

/**
 * From direct cost to price.
 *
 * @param direct sum of the direct costs
 * @param minimumTopUp what the small-job minimum adds
 */
public record CostBuildUp(
        Dollars direct,
        List<PriceStep> steps,
        BigDecimal contingency,
        BigDecimal overhead,
        BigDecimal profit,
        boolean profitIsMargin,
        BigDecimal step,
        Dollars minimumTopUp) {

    public CostBuildUp {
        steps = List.copyOf(steps);
    }
}
