// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.measure.Unit;
import spadework.money.Dollars;

/**
 * What a line item really took.
 *
 * @param quantity in the unit of the item
 * @param hours of its crew
 * @param material what the supplier's invoices say
 */
public record Actual(
        String code, BigDecimal quantity, Unit unit, Optional<BigDecimal> hours, Optional<Dollars> material) {}
