package spadework.schedule;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import spadework.company.Company;
import spadework.company.Slowdown;
import spadework.company.WorkCondition;
import spadework.measure.Quotient;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;

/** Crew hours: quantity ÷ production × the factor of every condition that slows the work. */
public final class CrewHours {
    private CrewHours() {}

    /** Hours of a line item's crew, unrounded; none without a crew. */
    public static BigDecimal of(Company company, LineItem item, BigDecimal quantity, List<WorkCondition> conditions) {
        return item.labor()
                .map(labor -> hours(company, labor, quantity, conditions))
                .orElse(BigDecimal.ZERO);
    }

    private static BigDecimal hours(Company company, Labor labor, BigDecimal quantity, List<WorkCondition> conditions) {
        BigDecimal hours = Quotient.of(quantity, labor.perHour());
        for (Slowdown slowdown : company.slowdowns()) {
            if (conditions.contains(slowdown.condition()) && labor.slowedBy().contains(slowdown.condition())) {
                hours = hours.multiply(slowdown.factor(), MathContext.DECIMAL128);
            }
        }
        return hours;
    }
}
