// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;
import spadework.measure.Percent;

/**
 * How a wall's trench is dug.
 *
 * @param handShare the part of a machine-dug trench that is dug by hand all the same, beside utilities and the footing
 * @param bottomWidth from the footing's edge outward
 */
public record Digging(Access access, Percent handShare, Length bottomWidth, Protection protection, TrenchEnds ends) {

    /** Digging with open ends. */
    public Digging(Access access, Percent handShare, Length bottomWidth, Protection protection) {
        this(access, handShare, bottomWidth, protection, TrenchEnds.OPEN);
    }
}
