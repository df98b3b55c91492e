// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.Optional;
import spadework.measure.Length;

/**
 * How deep a body is at a place; straight to the next one.
 *
 * @param at feet along the body
 * @param depth feet from grade to the bottom, 0 or more
 * @param grade level of the ground, where it is known; the bottom lies {@code depth} under it
 */
public record BodyStation(double at, double depth, Optional<Length> grade) {

    /** Depth at a place between this station and the next, feet. */
    double depthTo(BodyStation next, double place) {
        return next.at > at ? depth + (next.depth - depth) * (place - at) / (next.at - at) : depth;
    }
}
