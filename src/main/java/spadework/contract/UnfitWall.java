// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.Set;
import spadework.measure.Length;
import spadework.money.Dollars;

/**
 * Why an added wall is not charged by the foot, though the contract has a price for one more foot of wall.
 *
 * @param wall label of the added wall
 * @param named label of the wall like which one more foot is priced
 * @param differences what keeps the one from being like the other; never empty
 * @param length of the added wall
 * @param byTheFoot what that length would come to at the price that does not fit, to the cent
 */
public record UnfitWall(String wall, String named, Set<Difference> differences, Length length, Dollars byTheFoot) {

    /** In what a wall differs from the one that the contract priced. */
    public enum Difference {
        KIND,
        FOOTING,
        FINISH,
        DIGGING,
        OLD_SURFACE,
        WINDOW_WELLS,
        DEEPER,
        SHALLOWER,
        DRAIN,
        OTHER_WORK
    }

    public UnfitWall {
        differences = Set.copyOf(differences);
    }
}
