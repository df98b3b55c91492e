// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.part.PaymentRow;
import spadework.paperwork.part.PriceRow;
import spadework.paperwork.part.UnitPriceRow;

/**
 * The contract price.
 *
 * @param sections the work without options
 * @param proposedTax sales tax on it, zero unless the company collects it; the price of an option holds its own
 * @param total what the homeowner pays: proposal and options taken, with any tax
 */
public record ContractPrice(
        List<PriceRow> sections,
        Dollars proposedTax,
        Dollars total,
        List<UnitPriceRow> unitPrices,
        List<PaymentRow> payments) {

    public ContractPrice {
        sections = List.copyOf(sections);
        unitPrices = List.copyOf(unitPrices);
        payments = List.copyOf(payments);
    }
}
