// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import spadework.company.Company;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.takeoff.NetMaterial;
import spadework.takeoff.Stretch;

/** What so much of one line item would be sold for by itself, rounded up to the company's step. */
public final class ItemPrice {
    private ItemPrice() {}

    /**
     * By the path of every other price, without conditions that slow it and with material for exactly so much.
     *
     * @param quantity in the unit of the item, above 0
     */
    public static Dollars of(LineItem item, BigDecimal quantity, Company company, PriceBook book) {
        return sold(company, direct(item, quantity, company, book));
    }

    /** The price of one unit where its work is slowed by those conditions. */
    static Dollars slowed(LineItem item, Company company, PriceBook book, List<Stretch> stretches) {
        return sold(company, direct(item, BigDecimal.ONE, company, book, stretches));
    }

    private static Dollars sold(Company company, Dollars direct) {
        return Selling.price(company.priceRules(), direct.exact())
                .toStep(company.priceRules().step(), RoundingMode.CEILING);
    }

    /**
     * The direct cost behind that price.
     *
     * @param quantity in the unit of the item, above 0
     */
    public static Dollars direct(LineItem item, BigDecimal quantity, Company company, PriceBook book) {
        return direct(item, quantity, company, book, List.of());
    }

    private static Dollars direct(
            LineItem item, BigDecimal quantity, Company company, PriceBook book, List<Stretch> stretches) {
        Dollars material = item.material()
                .map(one -> material(one, NetMaterial.of(book, item, quantity)))
                .orElse(Dollars.ZERO);
        Direct direct = new Direct(company);
        return direct.of(item, quantity, direct.hours(item, quantity, stretches), material)
                .direct();
    }

    private static Dollars material(Material material, BigDecimal net) {
        BigDecimal packages = net.multiply(BigDecimal.ONE.add(material.waste().fraction()))
                .divide(material.holds(), MathContext.DECIMAL128);
        return material.cost().exact().times(packages).toCents(RoundingMode.HALF_UP);
    }
}
