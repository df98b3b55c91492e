// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import spadework.measure.Unit;

/**
 * So much of something that has an agreed unit price.
 *
 * @param price code of the unit price, as the proposal lists it
 * @param quantity in the unit of that price; negative for a credit
 */
public record UnitCount(String price, BigDecimal quantity, Unit unit) {}
