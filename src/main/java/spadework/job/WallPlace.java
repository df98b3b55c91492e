// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/**
 * Where a wall stands on the house.
 *
 * @param from distance of the wall's start from the west corner (north and south sides) or the north corner (east
 *     and west sides) of the house
 */
public record WallPlace(Side faces, Length from, Length length) {

    WallPlace withLength(Length other) {
        return new WallPlace(faces, from, other);
    }
}
