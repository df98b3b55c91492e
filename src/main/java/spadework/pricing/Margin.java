// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import spadework.company.PriceRules;
import spadework.money.Dollars;
import spadework.money.ExactDollars;

/** What is left of a price after cost, contingency, and overhead. */
public final class Margin {
    private Margin() {}

    /**
     * In percent of the price, to a tenth; nothing for no price.
     *
     * @param price before sales tax
     */
    public static Optional<BigDecimal> of(PriceRules rules, Dollars price, List<PricedLine> lines) {
        BigDecimal sold = price.amount();
        if (sold.signum() == 0) {
            return Optional.empty();
        }
        ExactDollars direct = ExactDollars.total(
                lines.stream().map(line -> line.cost().direct().exact()).toList());
        BigDecimal cost = Selling.withOverhead(rules, direct).amount();
        BigDecimal share = sold.subtract(cost).divide(sold, MathContext.DECIMAL64);
        return Optional.of(share.movePointRight(2).setScale(1, RoundingMode.HALF_UP));
    }
}
