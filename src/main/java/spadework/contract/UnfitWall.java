// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.Set;

/**
 * Why an added wall is not charged by the foot, though the contract has a price for one more foot of wall.
 *
 * @param wall label of the added wall
 * @param named label of the wall like which one more foot is priced
 * @param differences what keeps the one from being like the other; never empty
 */
public record UnfitWall(String wall, String named, Set<Difference> differences) {

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
