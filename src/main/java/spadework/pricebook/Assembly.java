// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.math.BigDecimal;
import java.util.List;

/**
 * Line items that belong together, each so much for one unit of what drives them. A job names it as it names an item.
 *
 * @param notes for the contractor only
 */
public record Assembly(String code, String name, Driver driver, List<Part> parts, List<String> notes) {

    /**
     * One item of an assembly.
     *
     * @param item its code
     * @param each how much of it goes with one unit of the driver, in the item's unit
     */
    public record Part(String item, BigDecimal each) {}

    public Assembly {
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
    }
}
