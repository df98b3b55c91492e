// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.List;

/** Everything that was measured: quantities with their workings, the line items they drive, and what to order. */
public record Takeoff(
        List<TakeoffSection> sections, List<Quantity> quantities, List<TakeoffLine> lines, List<Purchase> purchases) {

    public Takeoff {
        sections = List.copyOf(sections);
        quantities = List.copyOf(quantities);
        lines = List.copyOf(lines);
        purchases = List.copyOf(purchases);
    }
}
