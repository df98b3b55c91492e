// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import spadework.company.Company;
import spadework.money.Dollars;
import spadework.money.ExactDollars;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/**
 * What a line costs, before it has a price.
 *
 * @param hours of its crew; zero without one
 */
record LineCost(TakeoffLine line, LineItem item, BigDecimal hours, CostParts parts) {

    /** The costs of all lines that have a quantity, in their order. */
    static List<LineCost> of(Company company, PriceBook book, Takeoff takeoff) {
        Direct direct = new Direct(company);
        MaterialShares shares = new MaterialShares(
                book, takeoff.purchases(), company.priceRules().leftovers());
        List<LineCost> costs = new ArrayList<>();
        for (TakeoffLine line : takeoff.lines()) {
            if (line.quantity().signum() != 0) {
                LineItem item = book.get(line.code());
                BigDecimal hours = direct.hours(item, line.quantity(), line.stretches());
                costs.add(new LineCost(line, item, hours, direct.of(item, line.quantity(), hours, shares.next(line))));
            }
        }
        return costs;
    }

    /** The direct cost of all of them. */
    static ExactDollars direct(List<LineCost> costs) {
        return Dollars.total(costs.stream().map(cost -> cost.parts().direct()).toList())
                .exact();
    }
}
