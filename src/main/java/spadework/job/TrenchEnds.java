// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * How a wall's trench ends on both sides; an end that lies at a corner of two dug walls is none.
 *
 * @param rampRun how far a ramp runs for each foot that it rises; empty where nobody said
 */
public record TrenchEnds(EndKind start, EndKind end, Optional<Length> rampRun) {
    public static final TrenchEnds OPEN = new TrenchEnds(EndKind.OPEN, EndKind.OPEN, Optional.empty());

    /** One of the two. */
    public EndKind at(boolean atEnd) {
        return atEnd ? end : start;
    }
}
