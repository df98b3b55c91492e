// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import spadework.measure.Length;

/**
 * The ground over a place between the two ends of a pipe.
 *
 * @param at along the pipe from the end where its water enters
 * @param level of the ground there
 */
public record GroundPoint(Length at, Length level) {}
