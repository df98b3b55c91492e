// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import spadework.money.Dollars;

/** A line of the cost sheet. */
public record CostSheetLine(
        String code,
        String name,
        String section,
        BigDecimal quantity,
        String unit,
        String quantityText,
        String reason,
        Dollars material,
        Dollars purchaseTax,
        Dollars labor,
        Dollars machine,
        Dollars subcontract,
        Dollars disposal,
        Dollars direct,
        String crew,
        BigDecimal crewHours,
        Dollars unitPrice,
        Dollars price) {}
