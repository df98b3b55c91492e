// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import spadework.job.LimitKind;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Length;

/** Where the soil of a wall's trench can lie beside it. */
public final class SpoilRoom {
    /** How wide a heap beside a trench is; common practice, no source. */
    public static final Length HEAP = Length.ofFeet(3);

    private static final Set<LimitKind> NO_SOIL_ON =
            EnumSet.of(LimitKind.PROPERTY_LINE, LimitKind.NEIGHBOR_FOOTING, LimitKind.UTILITY);

    private SpoilRoom() {}

    /**
     * What a heap would lie on or lean over: the nearest lot line, neighbor's footing or marked utility that is closer
     * to the wall than the far foot of a heap which begins 2 ft behind the edge (29 CFR 1926.651(j)(2), T-17). Empty
     * where there is room. A utility in the trench itself keeps no heap away.
     */
    public static Optional<SiteLimit> inTheWay(Site site, Wall wall) {
        Length edge = Bank.of(site, wall).reach(wall);
        Length far = edge.plus(TrenchLimits.SPOIL_BACK).plus(HEAP);
        return site.limits().stream()
                .filter(limit -> limit.wall().equals(wall.label()))
                .filter(limit -> NO_SOIL_ON.contains(limit.kind()))
                .filter(limit ->
                        limit.kind() != LimitKind.UTILITY || limit.distance().compareTo(edge) > 0)
                .filter(limit -> limit.distance().compareTo(far) < 0)
                .min(Comparator.comparing(SiteLimit::distance));
    }
}
