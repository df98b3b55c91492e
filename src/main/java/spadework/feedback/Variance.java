// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.measure.Unit;
import spadework.money.Dollars;

/**
 * One item of one job: actual against estimate, in direct cost. The base of the split is the cost at the actual
 * quantity: what the item should have cost at the estimated hours and prices for as much as was really done.
 *
 * <ul>
 *   <li>quantity error = cost at the actual quantity − estimate: measured wrong;
 *   <li>production error = (actual hours − estimated hours for the actual quantity) × cost of a crew hour: slower or
 *       faster;
 *   <li>price error = invoices − estimated material for the actual quantity: the supplier's price, and what was wasted.
 * </ul>
 *
 * <p>Each is a difference of amounts in whole cents, so that the three add up to actual − estimate to the cent, in
 * whatever order. Where no invoice was written down, tons and gallons of the record stand at the book's price. Where
 * that is not known either, or no hours were written down, that part is taken as estimated, and its error is zero.
 *
 * @param quantity as estimated and as done
 * @param cost direct cost
 * @param purchases what its price and waste came to
 */
public record Variance(
        String code,
        String name,
        Unit unit,
        Quantities quantity,
        Hours hours,
        Costs cost,
        Errors error,
        Purchases purchases) {

    /** In the item's unit. */
    public record Quantities(BigDecimal estimated, BigDecimal actual) {}

    /**
     * Hours of the crew.
     *
     * @param actual empty where none were written down
     * @param production in the book's own terms: what the crew did in an hour, were nothing slowing it down
     */
    public record Hours(BigDecimal estimated, Optional<BigDecimal> actual, Optional<BigDecimal> production) {}

    /**
     * Direct cost, as estimated and as it came.
     *
     * @param invoices for material; empty where none was written down
     */
    public record Costs(Dollars estimated, Dollars actual, Optional<Dollars> invoices) {}

    /** Why the actual cost is not the estimated one. */
    public record Errors(Dollars quantity, Dollars production, Dollars price) {}

    /**
     * What a supplier took.
     *
     * @param factor invoices for each dollar of estimated material
     * @param packageCost what a package cost in the book that the job was estimated with
     */
    public record Purchases(Optional<BigDecimal> factor, Optional<Dollars> packageCost) {}

    /** Actual less estimate; the sum of the three errors. */
    public Dollars difference() {
        return cost.actual().minus(cost.estimated());
    }
}
