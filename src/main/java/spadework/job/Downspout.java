// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Area;

/**
 * A downspout.
 *
 * @param roof plan area of roof that drains to it
 * @param into label of the roof line that takes its water
 */
public record Downspout(String label, Area roof, String into) {}
