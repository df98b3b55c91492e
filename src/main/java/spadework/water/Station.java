// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.measure.Length;

/**
 * A place along a reach.
 *
 * @param at distance along the pipe from the end where its water comes in
 * @param invert level of the pipe's inside bottom, where it is known or lies straight between known ends
 * @param ground level of the ground over it, where it is known or follows from the walls
 * @param joints what stands there
 */
public record Station(Length at, Optional<Length> invert, Optional<Length> ground, List<Joint> joints) {

    public Station {
        joints = List.copyOf(joints);
    }
}
