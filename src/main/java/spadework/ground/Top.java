// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

/**
 * How high a trench, or the stone in it, reaches at a station; straight to the next one.
 *
 * @param at feet along the wall from its start
 * @param height feet over the trench's bottom, 0 or more
 */
public record Top(double at, double height) {}
