// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.measure.Length;

/**
 * A stretch of a drain before one wall, in the direction of its water.
 *
 * @param length along the wall
 * @param from level of the pipe's inside bottom where water comes in
 * @param to the same where it goes on
 */
public record DrainStretch(Length length, Length from, Length to) {}
