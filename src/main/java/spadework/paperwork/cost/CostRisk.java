// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import spadework.money.Dollars;

/**
 * A finding that costs money.
 *
 * @param what was found
 * @param item the line item that pays for it, or would
 * @param amount its price in this job, or what the book would ask
 * @param priced whether a line of the job carries it
 */
public record CostRisk(String what, String item, Dollars amount, boolean priced) {}
