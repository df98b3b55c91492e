// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.job.Job;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;

/** Quantities that can be counted only when the rest is measured, with the standard items that follow them. */
public final class DerivedQuantities {
    private DerivedQuantities() {}

    /** The takeoff with these quantities and their lines behind its own. */
    public static Takeoff added(Job job, PriceBook book, Takeoff takeoff, List<Quantity> later) {
        Map<Measure, List<LineItem>> standard = book.standard();
        List<Quantity> quantities = new ArrayList<>(takeoff.quantities());
        List<TakeoffLine> lines = new ArrayList<>(takeoff.lines());
        boolean buys = false;
        for (Quantity quantity : later) {
            quantities.add(quantity);
            Driven driven = new Driven(quantity, List.of(), List.of());
            for (LineItem item : standard.getOrDefault(quantity.measure(), List.of())) {
                lines.add(LineChoice.measuredLine(job, driven, item, List.of(driven)));
                buys |= item.material().isPresent();
            }
        }
        return new Takeoff(
                takeoff.sections(), quantities, lines, buys ? Ordering.purchases(book, lines) : takeoff.purchases());
    }
}
