// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import spadework.money.Dollars;

/**
 * A line of a statement of account, in the order of days.
 *
 * @param on in words
 * @param number of the invoice or receipt; blank for money that came in without a receipt of ours
 * @param what what was billed, or how the money came
 * @param billed zero for money that came in
 * @param paid zero for a bill
 * @param open what is open after it
 */
public record StatementRow(String on, String number, String what, Dollars billed, Dollars paid, Dollars open) {}
