// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.Optional;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.money.Dollars;

/**
 * What is bought for a line item.
 *
 * @param cost of one package
 * @param sold what a package is called, as "10 ft stick"
 * @param holds how much a package holds, in {@code unit}
 * @param unit the unit in which it is bought; that of the item unless {@code measured} says otherwise
 * @param each how much of it one unit of the item takes
 * @param measured when the takeoff measures the material itself, as tons of stone for cubic yards, that measure
 * @param waste bought on top of the net quantity, once
 */
@RecordBuilder
public record Material(
        Dollars cost,
        String sold,
        BigDecimal holds,
        Unit unit,
        BigDecimal each,
        Optional<Measure> measured,
        Percent waste)
        implements MaterialBuilder.With {

    /** The same material at another cost of a package. */
    Material at(Dollars other) {
        return withCost(other);
    }
}
