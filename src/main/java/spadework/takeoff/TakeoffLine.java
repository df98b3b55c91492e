// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.working.Worked;

/**
 * A line item that the job needs, with how much of it.
 *
 * @param code of the line item
 * @param quantity as printed, in the item's unit
 * @param from the quantity it follows; empty when it was put in by hand
 * @param stretches under which conditions which share of the work is done; empty where nothing slows it
 * @param bought net material for this line in the material's unit, unrounded
 * @param waste the share bought on top of it
 * @param reason why a line that was put in by hand is here; empty otherwise
 * @param working how its quantity follows the driver of an assembly; empty for a line of no assembly
 */
public record TakeoffLine(
        String code,
        TakeoffSection section,
        BigDecimal quantity,
        Unit unit,
        Optional<Quantity> from,
        List<Stretch> stretches,
        Optional<BigDecimal> bought,
        Optional<Percent> waste,
        String reason,
        Optional<Worked> working) {

    public TakeoffLine {
        stretches = List.copyOf(stretches);
    }
}
