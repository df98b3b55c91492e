// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import spadework.money.Dollars;

/**
 * Work that findings ask for, with what it comes to for the whole job.
 *
 * @param what was found, wherever it was
 * @param item the line item that pays for it, or would, with how much of it
 * @param amount its price in this job, or what the book would ask
 * @param priced whether a line of the job carries it
 */
public record CostRisk(String what, String item, Dollars amount, boolean priced) {}
