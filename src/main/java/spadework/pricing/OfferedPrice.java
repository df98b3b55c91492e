// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.time.LocalDate;
import java.util.List;
import spadework.money.Dollars;

/**
 * What a homeowner is told of a priced job: prices alone, no cost.
 *
 * @param bookTitle title of the price book that it was priced from
 * @param bookDate date of that book
 * @param minimumTopUp what the small-job minimum adds; zero on most jobs
 * @param price sum of the printed section prices and the top-up, before any sales tax
 * @param tax sales tax the homeowner pays; zero unless the company collects it
 * @param total what the homeowner pays
 * @param payments the total in installments
 */
public record OfferedPrice(
        String bookTitle,
        LocalDate bookDate,
        List<SectionPrice> sections,
        Dollars minimumTopUp,
        Dollars price,
        Dollars tax,
        Dollars total,
        List<UnitPrice> unitPrices,
        List<Due> payments) {

    public OfferedPrice {
        sections = List.copyOf(sections);
        unitPrices = LazyList.kept(unitPrices);
        payments = List.copyOf(payments);
    }
}
