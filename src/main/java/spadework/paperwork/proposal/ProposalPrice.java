// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.part.PriceRow;
import spadework.paperwork.part.UnitPriceRow;

/**
 * What the work costs.
 *
 * @param rows a price for each section
 * @param price before tax
 * @param tax zero when no tax line is printed
 * @param listing title and date of the price book
 * @param unknowns unit prices for what nobody can see before digging
 */
public record ProposalPrice(
        List<PriceRow> rows,
        Dollars price,
        Dollars tax,
        String taxRate,
        Dollars total,
        String listing,
        List<UnitPriceRow> unknowns) {

    public ProposalPrice {
        rows = List.copyOf(rows);
        unknowns = List.copyOf(unknowns);
    }
}
