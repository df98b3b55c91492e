// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.math.BigDecimal;
import spadework.measure.Unit;
import spadework.pricebook.Measure;

/**
 * How a measured quantity differs between two jobs, in printed figures.
 *
 * @param label the wall or run that it is measured at
 * @param before zero where it was not there
 * @param after zero where it is there no more
 */
public record QuantityChange(
        String id, Measure measure, String label, String description, Unit unit, BigDecimal before, BigDecimal after) {

    /** After less before. */
    public BigDecimal difference() {
        return after.subtract(before);
    }
}
