// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * The outline of the house on the plan: its size along the compass.
 *
 * @param front the side toward the street
 * @param door the middle of the front door, from the west or north corner of that side
 * @param wayIn how people get in and out during the work; empty where nobody wrote it down
 */
public record House(
        Length eastWest, Length northSouth, Optional<Side> front, Optional<Length> door, Optional<WayIn> wayIn) {

    /** A house of which nobody wrote down where its front lies. */
    public House(Length eastWest, Length northSouth) {
        this(eastWest, northSouth, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
