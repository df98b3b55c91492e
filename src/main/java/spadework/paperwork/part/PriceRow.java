// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import spadework.money.Dollars;

/** A section and its price. */
public record PriceRow(String name, String includes, Dollars price) {}
