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
 * that is not told either, or no hours were written down, that part is taken as estimated, and its error is zero.
 *
 * @param hours actual hours of the crew; so with {@code invoices}
 * @param estimate direct cost as estimated
 * @param actual direct cost as it came
 * @param perHour production in the book's own terms: what the crew did in an hour, were nothing slowing it down
 * @param materialFactor invoices for each dollar of estimated material
 * @param packageCost what a package cost in the book that the job was estimated with
 */
public record Variance(
        String code,
        String name,
        Unit unit,
        BigDecimal estimatedQuantity,
        BigDecimal actualQuantity,
        BigDecimal estimatedHours,
        Optional<BigDecimal> hours,
        Optional<Dollars> invoices,
        Dollars estimate,
        Dollars actual,
        Dollars quantityError,
        Dollars productionError,
        Dollars priceError,
        Optional<BigDecimal> perHour,
        Optional<BigDecimal> materialFactor,
        Optional<Dollars> packageCost) {

    /** Actual less estimate; the sum of the three errors. */
    public Dollars difference() {
        return actual.minus(estimate);
    }
}
