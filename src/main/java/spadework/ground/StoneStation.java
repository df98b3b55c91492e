// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

/**
 * The stone at a station of a wall; feet. Straight to the next station.
 *
 * @param at along the wall from its start
 * @param under from the trench's bottom to the pipe's outside bottom
 * @param height of the stone over the trench's bottom
 */
public record StoneStation(double at, double under, double height) {}
