// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import java.util.Set;
import spadework.measure.Length;

/**
 * What the wall looks like before the work.
 *
 * @param surface what is on its outer face
 * @param cracks length of cracks to be filled
 * @param horizontalCrack a crack runs along the wall
 * @param displaced a crack's sides have moved against each other, stair-step cracks in block among them
 * @param bow how far the wall leans or bows in; empty when nobody measured it
 * @param footingUndermined soil is missing under the footing
 * @param tiedToFloor the floor above is fastened to the top of the wall; empty when nobody looked
 * @param unseen what nobody looked at; what stands for it above is no more than a placeholder
 */
public record Condition(
        Surface surface,
        Length cracks,
        boolean horizontalCrack,
        boolean displaced,
        Optional<Length> bow,
        boolean footingUndermined,
        Optional<Boolean> tiedToFloor,
        Set<Unseen> unseen) {

    public Condition {
        unseen = Set.copyOf(unseen);
    }
}
