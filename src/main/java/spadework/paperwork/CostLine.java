package spadework.paperwork;

import java.math.BigDecimal;
import spadework.money.Dollars;

/** A line of the cost sheet. */
public record CostLine(
        String code,
        String name,
        String section,
        BigDecimal quantity,
        String unit,
        String quantityText,
        String reason,
        Dollars material,
        Dollars purchaseTax,
        Dollars labour,
        Dollars machine,
        Dollars subcontract,
        Dollars disposal,
        Dollars direct,
        String crew,
        BigDecimal crewHours,
        Dollars unitPrice,
        Dollars price) {}
