// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.working.Working;

/**
 * A measured quantity with its working.
 *
 * @param label of the wall or run that it was measured at
 * @param id unique in the takeoff, as {@code A.dig-machine}
 */
public record Quantity(
        String id, Measure measure, TakeoffSection section, String label, String description, Working working) {

    public Unit unit() {
        return working.unit();
    }

    /** Unrounded. */
    public BigDecimal value() {
        return working.value();
    }

    /** To the decimals in which its unit is printed; this is what a price multiplies. */
    public BigDecimal printed() {
        return Figures.printed(value(), unit());
    }
}
