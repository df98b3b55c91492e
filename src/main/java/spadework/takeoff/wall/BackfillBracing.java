// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import spadework.job.Wall;
import spadework.measure.Length;

/**
 * When a wall is braced before it is filled against: nobody knows that it is tied to the floor above, and it holds back
 * 4 ft of soil or more (IRC R404.1.7, 2009 edition on).
 */
public final class BackfillBracing {
    /** Where the rule stands. */
    public static final String CITATION = "IRC R404.1.7 (2009 edition on)";

    private static final Length FROM = Length.ofFeet(4);

    private BackfillBracing() {}

    public static boolean isDue(Wall wall) {
        return !wall.condition().tiedToFloor().orElse(false) && wall.deepest().compareTo(FROM) >= 0;
    }
}
