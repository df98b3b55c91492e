// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Area;

/**
 * A downspout.
 *
 * @param roof plan area of roof that drains to it
 * @param into label of the roof line that takes its water
 * @param place where it comes down; empty where nobody wrote it
 */
public record Downspout(String label, Area roof, String into, Optional<HousePlace> place) {

    /** One of which nobody wrote where it comes down. */
    public Downspout(String label, Area roof, String into) {
        this(label, roof, into, Optional.empty());
    }
}
