package spadework.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import spadework.company.Company;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/** Prices each line: the unit price is rounded to a cent, and quantity × unit price, rounded to a cent, is the price. */
final class LinePricing {
    private LinePricing() {}

    static List<PricedLine> of(Company company, PriceBook book, Takeoff takeoff) {
        Direct direct = new Direct(company);
        MaterialShares shares = new MaterialShares(book, takeoff.purchases());
        List<PricedLine> priced = new ArrayList<>();
        for (TakeoffLine line : takeoff.lines()) {
            if (line.quantity().signum() != 0) {
                LineItem item = book.get(line.code());
                CostParts cost = direct.of(item, line.quantity(), line.conditions(), shares.next(line));
                priced.add(priced(company, item, line, cost, Direct.hours(direct, item, line)));
            }
        }
        return priced;
    }

    private static PricedLine priced(
            Company company, LineItem item, TakeoffLine line, CostParts cost, BigDecimal hours) {
        Dollars unitPrice = Selling.price(company.priceRules(), cost.direct().exact())
                .dividedBy(line.quantity())
                .toCents(RoundingMode.HALF_UP);
        return new PricedLine(
                item.code(),
                item.name(),
                line.section(),
                line.quantity(),
                line.unit(),
                line.reason(),
                cost,
                item.labour().map(labour -> labour.crew()).orElse(""),
                hours,
                unitPrice,
                unitPrice.exact().times(line.quantity()).toCents(RoundingMode.HALF_UP));
    }
}
