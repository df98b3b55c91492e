// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spadework.company.Company;
import spadework.company.TaxMode;
import spadework.money.Dollars;
import spadework.money.ExactDollars;
import spadework.pricebook.LineItem;
import spadework.schedule.CrewHours;
import spadework.takeoff.Stretch;

/** The direct cost of a line: material as ordered, labor, machine, subcontract, disposal. */
final class Direct {
    private final Company company;
    private final Map<String, ExactDollars> crews = new HashMap<>();

    Direct(Company company) {
        this.company = company;
    }

    /**
     * The cost of a line.
     *
     * @param hours of its crew
     * @param material its share of what is ordered
     */
    CostParts of(LineItem item, BigDecimal quantity, BigDecimal hours, Dollars material) {
        ExactDollars crew = item.labor().map(labor -> crew(labor.crew())).orElse(ExactDollars.ZERO);
        ExactDollars machine =
                item.labor().map(labor -> CrewHour.machine(company, labor)).orElse(ExactDollars.ZERO);
        return new CostParts(
                material,
                purchaseTax(material),
                cents(crew.times(hours)),
                cents(machine.times(hours)),
                item.subcontract().map(price -> each(price, quantity)).orElse(Dollars.ZERO),
                item.disposal().map(price -> each(price, quantity)).orElse(Dollars.ZERO));
    }

    /** Crew hours of a line item. */
    BigDecimal hours(LineItem item, BigDecimal quantity, List<Stretch> stretches) {
        return CrewHours.of(company, item, quantity, stretches);
    }

    private ExactDollars crew(String name) {
        return crews.computeIfAbsent(name, crew -> CrewHour.crew(company, crew));
    }

    private Dollars purchaseTax(Dollars material) {
        return company.tax().mode() == TaxMode.ON_PURCHASES
                ? cents(material.exact().times(company.tax().rate().fraction()))
                : Dollars.ZERO;
    }

    private static Dollars each(Dollars price, BigDecimal quantity) {
        return cents(price.exact().times(quantity));
    }

    private static Dollars cents(ExactDollars amount) {
        return amount.toCents(RoundingMode.HALF_UP);
    }
}
