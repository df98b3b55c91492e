// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import spadework.money.Dollars;

/**
 * A line of the final account.
 *
 * @param on in words
 */
public record AccountRow(String what, String on, Dollars amount) {}
