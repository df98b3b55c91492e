// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.RoundingMode;
import java.util.List;
import spadework.company.Company;
import spadework.money.Dollars;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/**
 * Prices each line: the unit price is rounded to a cent, and quantity × unit price, rounded to a cent, is the price.
 */
final class LinePricing {
    private LinePricing() {}

    static List<PricedLine> of(Company company, PriceBook book, Takeoff takeoff) {
        return of(company, LineCost.of(company, book, takeoff));
    }

    static List<PricedLine> of(Company company, List<LineCost> costs) {
        return costs.stream().map(cost -> priced(company, cost)).toList();
    }

    private static PricedLine priced(Company company, LineCost cost) {
        TakeoffLine line = cost.line();
        Dollars unitPrice =
                Selling.unitPrice(company.priceRules(), cost.parts().direct().exact(), line.quantity());
        return new PricedLine(
                cost.item().code(),
                cost.item().name(),
                line.section(),
                line.quantity(),
                line.unit(),
                line.reason(),
                cost.parts(),
                cost.item().labor().map(labor -> labor.crew()).orElse(""),
                cost.hours(),
                unitPrice,
                unitPrice.exact().times(line.quantity()).toCents(RoundingMode.HALF_UP));
    }
}
