// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import spadework.money.Dollars;

/** A line of the cost sheet. */
public record CostSheetLine(
        String code,
        String name,
        String section,
        LineAmount amount,
        String reason,
        LineParts cost,
        String crew,
        BigDecimal crewHours,
        Dollars unitPrice,
        Dollars price) {}
