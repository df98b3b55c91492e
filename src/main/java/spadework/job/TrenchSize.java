// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * The cross-section of a pipe trench away from the house.
 *
 * @param depth mean depth as somebody typed it; where levels are known they say how deep it is
 * @param protection how it is kept from falling in; empty for upright under 5 ft and sloped where it is deeper
 */
public record TrenchSize(Length width, Length depth, Optional<Protection> protection) {

    /** A trench for whose protection the job leaves the usual. */
    public TrenchSize(Length width, Length depth) {
        this(width, depth, Optional.empty());
    }
}
