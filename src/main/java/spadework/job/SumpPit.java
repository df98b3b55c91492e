// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.FlowRate;
import spadework.measure.Length;

/**
 * What is known of a sump.
 *
 * @param diameter inside diameter of the basin
 * @param depth inside depth of the basin
 * @param lift from the water at which the pump stops to the highest point of the discharge pipe
 * @param pumpFlow what the pump delivers at {@code pumpHead}, from its maker's curve
 * @param pumpHead the head at which it delivers that
 * @param place inside or outside the house
 * @param fromFooting clear distance from the edge of the footing to the edge of the hole
 * @param observedInflow what was seen to come into a test pit, or into the basin; empty where nobody looked
 */
public record SumpPit(
        Optional<Length> diameter,
        Optional<Length> depth,
        Optional<Length> lift,
        Optional<FlowRate> pumpFlow,
        Optional<Length> pumpHead,
        PitPlace place,
        Optional<Length> fromFooting,
        Optional<FlowRate> observedInflow) {}
