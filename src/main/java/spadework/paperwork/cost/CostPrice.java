// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import spadework.money.Dollars;

/**
 * The price and what it leaves.
 *
 * @param left what is left of the price after cost, contingency and overhead
 * @param margin the same as a share of the price, as {@code 12.1%}
 */
public record CostPrice(Dollars price, Dollars tax, Dollars total, Dollars left, String margin) {}
