// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.RoundingMode;
import spadework.measure.Percent;
import spadework.money.Dollars;

/** Sales tax on an invoice. */
public final class SalesTax {
    private SalesTax() {}

    /**
     * The tax on an amount: the exact product, rounded half up once (Streamlined Sales and Use Tax Agreement s. 324:
     * up when the third decimal is greater than four).
     */
    public static Dollars on(Dollars amount, Percent rate) {
        return amount.exact().times(rate.fraction()).toCents(RoundingMode.HALF_UP);
    }
}
