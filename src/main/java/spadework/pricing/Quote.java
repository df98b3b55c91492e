// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.time.LocalDate;
import java.util.List;
import spadework.money.Dollars;
import spadework.working.Worked;

/**
 * A priced job.
 *
 * @param minimumTopUp what the small-job minimum adds; zero on most jobs
 * @param price sum of the printed section prices and the top-up, before any sales tax
 * @param tax sales tax the homeowner pays; zero unless the company collects it
 * @param total what the homeowner pays
 * @param buildUp direct cost to price, step by step
 * @param unitPrices for the unknown; worked out when they are first asked for, as they take most of the time
 */
public record Quote(
        String bookTitle,
        LocalDate bookDate,
        List<PricedLine> lines,
        List<PricedSection> sections,
        Dollars minimumTopUp,
        Dollars price,
        Dollars tax,
        Dollars total,
        List<Worked> buildUp,
        List<UnitPrice> unitPrices,
        List<Due> payments) {

    public Quote {
        lines = List.copyOf(lines);
        sections = List.copyOf(sections);
        buildUp = List.copyOf(buildUp);
        unitPrices = LazyList.kept(unitPrices);
        payments = List.copyOf(payments);
    }

    /** The prices alone, as a homeowner may see them. */
    public OfferedPrice offered() {
        return new OfferedPrice(
                bookTitle,
                bookDate,
                sections.stream()
                        .map(section -> new SectionPrice(section.section(), section.price()))
                        .toList(),
                minimumTopUp,
                price,
                tax,
                total,
                unitPrices,
                payments);
    }
}
