// SPDX-License-Identifier: Apache-2.0
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
import spadework.takeoff.Stretch;

/**
 * Crew hours: quantity ÷ production × the factor of every condition that slows the work, the stretches weighted by
 * their shares.
 */
public final class CrewHours {
    private CrewHours() {}

    /** Hours of a line item's crew, unrounded; none without a crew. */
    public static BigDecimal of(Company company, LineItem item, BigDecimal quantity, List<Stretch> stretches) {
        return item.labor()
                .map(labor -> Quotient.of(quantity, labor.perHour())
                        .multiply(slowed(company, labor, stretches), MathContext.DECIMAL128))
                .orElse(BigDecimal.ZERO);
    }

    /** The same as a floating-point number, for laying work onto days. */
    static double number(Company company, Labor labor, BigDecimal quantity, List<Stretch> stretches) {
        double hours = quantity.doubleValue() / labor.perHour().doubleValue();
        return stretches.isEmpty()
                ? hours
                : hours * slowed(company, labor, stretches).doubleValue();
    }

    private static BigDecimal slowed(Company company, Labor labor, List<Stretch> stretches) {
        if (stretches.isEmpty()) {
            return BigDecimal.ONE;
        }
        BigDecimal slowed = BigDecimal.ZERO;
        for (Stretch stretch : stretches) {
            slowed = slowed.add(stretch.share().multiply(factor(company, labor, stretch.conditions())));
        }
        return slowed;
    }

    private static BigDecimal factor(Company company, Labor labor, List<WorkCondition> conditions) {
        BigDecimal factor = BigDecimal.ONE;
        for (Slowdown slowdown : company.slowdowns()) {
            if (conditions.contains(slowdown.condition()) && labor.slowedBy().contains(slowdown.condition())) {
                factor = factor.multiply(slowdown.factor(), MathContext.DECIMAL128);
            }
        }
        return factor;
    }
}
