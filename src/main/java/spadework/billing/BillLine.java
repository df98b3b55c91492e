// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import spadework.money.Dollars;

/**
 * A line of a bill.
 *
 * @param amount below zero where a change takes away
 */
public record BillLine(BillItem item, Dollars amount) {}
