// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.takeoff.TakeoffSection;

/**
 * A line with its cost and its price. The printed quantity times the unit price is the price, to the cent.
 *
 * @param crew name of the crew, empty for none
 * @param crewHours hours of that crew
 */
public record PricedLine(
        String code,
        String name,
        TakeoffSection section,
        BigDecimal quantity,
        Unit unit,
        String reason,
        CostParts cost,
        String crew,
        BigDecimal crewHours,
        Dollars unitPrice,
        Dollars price) {}
