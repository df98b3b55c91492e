// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import spadework.measure.Length;

/**
 * Where a wall stands on the house.
 *
 * @param from distance of the wall's start from the west corner (north and south sides) or the north corner (east
 *     and west sides) of the house
 */
@RecordBuilder
public record WallPlace(Side faces, Length from, Length length) implements WallPlaceBuilder.With {}
