// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/**
 * One end of a wall.
 *
 * @param atEnd true for the wall's end, false for its start
 */
public record WallEnd(String wall, boolean atEnd) {}
