// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.money.ExactDollars;

class SellingTest {
    private static PriceRules rules(String contingency, String overhead, ProfitBasis basis, String profit) {
        return new PriceRules(
                Percent.of(contingency),
                Percent.of(overhead),
                basis,
                Percent.of(profit),
                Dollars.ZERO,
                Dollars.of("1.00"),
                spadework.company.Leftovers.CHARGED);
    }

    /** Order of build-up: 12,000 → 13,200 → 15,840 → 18,000.00 at a margin of 12%. */
    @Test
    void buildUpWithMargin() {
        PriceRules rules = rules("10", "20", ProfitBasis.MARGIN, "12");
        ExactDollars direct = ExactDollars.of("12000");
        assertThat(Selling.withContingency(rules, direct).amount()).isEqualByComparingTo("13200");
        assertThat(Selling.withOverhead(rules, direct).amount()).isEqualByComparingTo("15840");
        assertThat(Selling.price(rules, direct).amount()).isEqualByComparingTo("18000");
    }

    /** The same 12% as a markup is 259.20 short. */
    @Test
    void markupIsNotMargin() {
        ExactDollars price = Selling.price(rules("10", "20", ProfitBasis.MARKUP, "12"), ExactDollars.of("12000"));
        assertThat(price.amount()).isEqualByComparingTo("17740.80");
    }

    /** Markup = margin ÷ (1 − margin), published pairs: a cost of 100 at each margin. */
    @ParameterizedTest(name = "margin {0}% is a markup of {1}%")
    @CsvSource({"10, 11.11", "15, 17.65", "20, 25.00", "25, 33.33", "30, 42.86", "40, 66.67", "50, 100.00"})
    void marginAndMarkupPairs(String margin, String markup) {
        ExactDollars price = Selling.price(rules("0", "0", ProfitBasis.MARGIN, margin), ExactDollars.of("100"));
        assertThat(price.toCents(RoundingMode.HALF_UP))
                .isEqualTo(Dollars.of("100").plus(Dollars.of(markup)));
    }
}
