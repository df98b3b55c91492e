// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/**
 * A place on the outline of the house.
 *
 * @param from distance from the west corner (north and south sides) or the north corner (east and west sides) of the
 *     house
 */
public record HousePlace(Side side, Length from) {}
