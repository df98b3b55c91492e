// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/**
 * Where a solid run begins in the trench at a wall.
 *
 * @param wall label of the wall
 * @param length how far the run lies along the wall before it leaves the trench; 0 where it leaves at once
 */
public record BesideWall(String wall, Length length) {}
