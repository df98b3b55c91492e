// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.util.Optional;
import spadework.job.UnitCount;
import spadework.measure.Unit;
import spadework.money.Dollars;

/**
 * A price agreed beforehand for what nobody can see before digging.
 *
 * @param homeowner what it is for the homeowner; for more wall or more depth the label of the wall that it is like
 */
public record UnitPrice(String code, String name, String homeowner, Unit unit, Dollars price) {
    static final String WALL_FOOT = UnitCount.WALL_FOOT;
    static final String WALL_DEEPER = UnitCount.WALL_DEEPER;

    /** For more wall or more depth, which of the two it is: {@code wall-foot} or {@code wall-deeper}. */
    public static Optional<String> wallKey(UnitPrice price) {
        if (price.code().equals(WALL_FOOT + "-" + price.homeowner())) {
            return Optional.of("wall-foot");
        }
        return price.code().equals(WALL_DEEPER + "-" + price.homeowner())
                ? Optional.of("wall-deeper")
                : Optional.empty();
    }
}
