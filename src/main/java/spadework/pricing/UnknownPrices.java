// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spadework.company.Company;
import spadework.job.Access;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.money.ExactDollars;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.schedule.DayQuantities;
import spadework.takeoff.Conditions;
import spadework.takeoff.Stretch;

/**
 * Unit prices for what nobody can see before digging, by the same path as every other price, rounded up to the
 * company's step; work that may be needed anywhere is slowed by all that slows work at any wall. More wall and more
 * depth are priced by measuring the job once more with more of it.
 */
final class UnknownPrices {
    /** Enough wall that whole packages and loads no longer move the price of a foot. */
    private static final Length MORE_WALL = Length.ofFeet(100);

    private static final Length DEEPER = Length.ofInches(6);

    private UnknownPrices() {}

    /**
     * The unit prices.
     *
     * @param costs of the lines of the job as it is
     */
    static List<UnitPrice> of(Job job, Company company, PriceBook book, List<LineCost> costs) {
        List<UnitPrice> prices = new ArrayList<>();
        ExactDollars now = Selling.price(company.priceRules(), LineCost.direct(costs));
        for (Access access : Access.values()) {
            job.walls().stream()
                    .filter(wall -> wall.digging().access() == access)
                    .findFirst()
                    .ifPresent(wall -> prices.addAll(wallPrices(job, company, book, wall, now)));
        }
        List<Stretch> anywhere = Conditions.anywhere(job);
        book.items().values().stream()
                .filter(LineItem::unknown)
                .sorted(Comparator.comparing(LineItem::code))
                .map(item -> itemPrice(item, company, book, anywhere))
                .forEach(prices::add);
        return prices;
    }

    private static List<UnitPrice> wallPrices(Job job, Company company, PriceBook book, Wall wall, ExactDollars now) {
        ExactDollars longer = price(job.withWall(wall.withLength(wall.length().plus(MORE_WALL))), company, book);
        ExactDollars deeper = price(job.withWall(wall.deeperBy(DEEPER)), company, book);
        return List.of(
                wallPrice(
                        UnitPrice.WALL_FOOT + "-" + wall.label(),
                        wall,
                        "more wall",
                        longer.minus(now),
                        MORE_WALL.feet(),
                        company),
                wallPrice(
                        UnitPrice.WALL_DEEPER + "-" + wall.label(),
                        wall,
                        "deeper",
                        deeper.minus(now),
                        wall.length().feet(),
                        company));
    }

    private static UnitPrice wallPrice(
            String code, Wall wall, String what, ExactDollars more, double feet, Company company) {
        ExactDollars each = more.dividedBy(BigDecimal.valueOf(feet));
        return new UnitPrice(code, what, wall.label(), Unit.FOOT, roundedUp(each, company));
    }

    private static ExactDollars price(Job job, Company company, PriceBook book) {
        List<LineCost> costs = LineCost.of(company, book, DayQuantities.takeoff(job, company, book));
        return Selling.price(company.priceRules(), LineCost.direct(costs));
    }

    private static UnitPrice itemPrice(LineItem item, Company company, PriceBook book, List<Stretch> stretches) {
        return new UnitPrice(
                item.code(),
                item.name(),
                item.homeowner(),
                item.unit(),
                ItemPrice.slowed(item, company, book, stretches));
    }

    private static Dollars roundedUp(ExactDollars price, Company company) {
        return price.toStep(company.priceRules().step(), RoundingMode.CEILING);
    }
}
