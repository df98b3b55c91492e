package spadework.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.company.Company;
import spadework.company.Slowdown;
import spadework.company.TaxMode;
import spadework.company.WorkCondition;
import spadework.measure.Quotient;
import spadework.money.Dollars;
import spadework.money.ExactDollars;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;

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
                each(item.subcontract(), quantity),
                each(item.disposal(), quantity));
    }

    /** Crew hours: quantity ÷ production × the factor of every condition that slows the work; none without a crew. */
    BigDecimal hours(LineItem item, BigDecimal quantity, List<WorkCondition> conditions) {
        return item.labor().map(labor -> hours(labor, quantity, conditions)).orElse(BigDecimal.ZERO);
    }

    private BigDecimal hours(Labor labor, BigDecimal quantity, List<WorkCondition> conditions) {
        BigDecimal hours = Quotient.of(quantity, labor.perHour());
        for (Slowdown slowdown : company.slowdowns()) {
            if (conditions.contains(slowdown.condition()) && labor.slowedBy().contains(slowdown.condition())) {
                hours = hours.multiply(slowdown.factor(), MathContext.DECIMAL128);
            }
        }
        return hours;
    }

    private ExactDollars crew(String name) {
        return crews.computeIfAbsent(name, crew -> CrewHour.crew(company, crew));
    }

    private Dollars purchaseTax(Dollars material) {
        return company.tax().mode() == TaxMode.ON_PURCHASES
                ? cents(material.exact().times(company.tax().rate().fraction()))
                : Dollars.ZERO;
    }

    private static Dollars each(Optional<Dollars> price, BigDecimal quantity) {
        return price.map(p -> cents(p.exact().times(quantity))).orElse(Dollars.ZERO);
    }

    private static Dollars cents(ExactDollars amount) {
        return amount.toCents(RoundingMode.HALF_UP);
    }
}
