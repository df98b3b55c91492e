// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.math.BigDecimal;
import spadework.money.Dollars;

/** So much at an agreed unit price. */
public record UnitLineRow(
        String name, BigDecimal quantity, String quantityText, String unit, Dollars price, Dollars amount) {}
