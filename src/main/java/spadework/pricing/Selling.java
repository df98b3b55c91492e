// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
import spadework.money.Dollars;
import spadework.money.ExactDollars;

/**
 * From direct cost to price: + contingency, + overhead on that, then profit. A margin divides by (1 − margin), a
 * markup multiplies by (1 + markup).
 */
public final class Selling {
    private Selling() {}

    /** Direct cost with contingency. */
    public static ExactDollars withContingency(PriceRules rules, ExactDollars direct) {
        return direct.plusPercent(rules.contingency());
    }

    /** Direct cost with contingency and overhead. */
    public static ExactDollars withOverhead(PriceRules rules, ExactDollars direct) {
        return withContingency(rules, direct).plusPercent(rules.overhead());
    }

    /** The price, to 34 significant digits. */
    public static ExactDollars price(PriceRules rules, ExactDollars direct) {
        ExactDollars cost = withOverhead(rules, direct);
        return rules.basis() == ProfitBasis.MARGIN
                ? cost.dividedBy(leftOfPrice(rules))
                : cost.plusPercent(rules.profit());
    }

    /** The price of one unit: the price divided by the quantity, rounded once, half up to a cent. */
    static Dollars unitPrice(PriceRules rules, ExactDollars direct, BigDecimal quantity) {
        ExactDollars cost = withOverhead(rules, direct);
        return rules.basis() == ProfitBasis.MARGIN
                ? cost.dividedBy(leftOfPrice(rules).multiply(quantity), RoundingMode.HALF_UP)
                : cost.plusPercent(rules.profit()).dividedBy(quantity, RoundingMode.HALF_UP);
    }

    /** What the margin leaves of a price of 1. */
    private static BigDecimal leftOfPrice(PriceRules rules) {
        return BigDecimal.ONE.subtract(rules.profit().fraction());
    }
}
