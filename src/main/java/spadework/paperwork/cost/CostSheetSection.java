// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import spadework.money.Dollars;

/** A section of the cost sheet. */
public record CostSheetSection(String name, Dollars direct, Dollars lines, Dollars rounding, Dollars price) {}
