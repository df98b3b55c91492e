// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import spadework.money.Dollars;

/**
 * What a bill asks for.
 *
 * @param payment true for a payment of the contract, false for a change order
 * @param number of the payment or of the change order
 * @param what the event of the payment, or the title of the change
 */
public record BillRow(boolean payment, int number, String what, Dollars amount) {}
