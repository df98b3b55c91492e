// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import spadework.money.Dollars;

/** What a line costs, by kind. {@code direct} is their sum. */
public record LineParts(
        Dollars material,
        Dollars purchaseTax,
        Dollars labor,
        Dollars machine,
        Dollars subcontract,
        Dollars disposal,
        Dollars direct) {}
