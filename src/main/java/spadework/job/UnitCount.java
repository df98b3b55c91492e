// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.measure.Unit;

/**
 * So much of something that has an agreed unit price.
 *
 * @param price code of the unit price, as the proposal lists it
 * @param quantity in the unit of that price; negative for a credit
 * @param wall label of the wall at which it is done; empty where it belongs to no one wall
 */
public record UnitCount(String price, BigDecimal quantity, Unit unit, Optional<String> wall) {
    /** How the code begins that prices another foot of wall. */
    public static final String WALL_FOOT = "WALL-FOOT";

    /** How the code begins that prices a foot of wall 6 in deeper. */
    public static final String WALL_DEEPER = "WALL-DEEPER";

    /** The section of what belongs to no one wall. */
    private static final String SECTION = "setup";

    /** So much that belongs to no one wall. */
    public UnitCount(String price, BigDecimal quantity, Unit unit) {
        this(price, quantity, unit, Optional.empty());
    }

    /** Whether it is more wall or more depth: its work is that of the wall as it is then, not a line item. */
    public boolean isOfWall() {
        return price.startsWith(WALL_FOOT) || price.startsWith(WALL_DEEPER);
    }

    /** Whether a line item of the price book does it; a credit takes no work. */
    boolean isWork() {
        return quantity.signum() > 0 && !isOfWall();
    }

    /** The same as a line item put in by hand. */
    ExtraItem item(String reason) {
        return new ExtraItem(price, Optional.of(quantity), wall.orElse(SECTION), reason);
    }
}
