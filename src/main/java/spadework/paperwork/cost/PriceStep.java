// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;

/**
 * A step from cost to price.
 *
 * @param text the amount, or a percentage
 */
public record PriceStep(String name, String formula, String figures, BigDecimal value, String text) {}
