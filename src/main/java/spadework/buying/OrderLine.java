// SPDX-License-Identifier: Apache-2.0
package spadework.buying;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * A line of an order.
 *
 * @param code of our item
 * @param number the supplier's own; blank where there is none
 * @param packages whole ones
 * @param sold what a package is called
 * @param price of a package by our book
 * @param onSite how many the job uses, where that is more than it buys because one serves several jobs; else empty
 */
public record OrderLine(
        String code,
        String number,
        String name,
        BigDecimal packages,
        String sold,
        Dollars price,
        Optional<BigDecimal> onSite) {

    /** Packages at the price of our book. */
    public Dollars amount() {
        return price.exact().times(packages).toCents(RoundingMode.HALF_UP);
    }
}
