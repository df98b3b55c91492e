package spadework.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
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
                ? cost.dividedBy(BigDecimal.ONE.subtract(rules.profit().fraction(), MathContext.UNLIMITED))
                : cost.plusPercent(rules.profit());
    }
}
