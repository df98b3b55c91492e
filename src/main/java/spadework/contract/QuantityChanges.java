// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;

/** The takeoff difference of two jobs: computed, never typed. */
public final class QuantityChanges {
    private QuantityChanges() {}

    /** What differs in printed figures, in the order of the later takeoff; what fell away comes last. */
    public static List<QuantityChange> between(Takeoff before, Takeoff after) {
        Map<String, Quantity> gone = new LinkedHashMap<>();
        before.quantities().forEach(quantity -> gone.put(quantity.id(), quantity));
        List<QuantityChange> changes = new ArrayList<>();
        for (Quantity now : after.quantities()) {
            Quantity then = gone.remove(now.id());
            BigDecimal was = then == null ? BigDecimal.ZERO : then.printed();
            if (was.compareTo(now.printed()) != 0) {
                changes.add(change(now, was, now.printed()));
            }
        }
        gone.values().forEach(then -> changes.add(change(then, then.printed(), BigDecimal.ZERO)));
        return changes;
    }

    private static QuantityChange change(Quantity quantity, BigDecimal before, BigDecimal after) {
        return new QuantityChange(
                quantity.id(),
                quantity.measure(),
                quantity.label(),
                quantity.description(),
                quantity.unit(),
                before,
                after);
    }
}
