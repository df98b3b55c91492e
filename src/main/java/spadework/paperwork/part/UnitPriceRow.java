// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import spadework.money.Dollars;

/** A unit price for what nobody can see before digging. */
public record UnitPriceRow(String name, String explanation, String unit, Dollars price) {}
