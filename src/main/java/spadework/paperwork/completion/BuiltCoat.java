// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.math.BigDecimal;
import java.util.List;

/**
 * What was put on a wall.
 *
 * @param area coated area, from the built length and depths
 * @param areaFigure the same unrounded, for a cell: the film follows it
 * @param gallons as recorded
 * @param gallonsFigure gallons, for a cell; empty list where they were not recorded
 * @param readings what the gauge read, one coat a line
 */
public record BuiltCoat(
        String area,
        BigDecimal areaFigure,
        String gallons,
        List<BigDecimal> gallonsFigure,
        List<String> batches,
        String temperature,
        List<String> readings) {

    public BuiltCoat {
        gallonsFigure = List.copyOf(gallonsFigure);
        batches = List.copyOf(batches);
        readings = List.copyOf(readings);
    }
}
