// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.measure.FilmThickness;
import spadework.measure.Length;

/**
 * A wall as built.
 *
 * @param depthStart grade to the top of the footing at the start, measured in the open trench
 * @param gallons of liquid that went on the wall
 * @param batches batch numbers from the pails or rolls
 * @param temperature air and wall while it was coated, in words
 * @param holdPoints what was looked at before the work went on
 * @param coats what the gauge read on each coat
 */
public record BuiltWall(
        String label,
        Length length,
        Length depthStart,
        Length depthEnd,
        Optional<BigDecimal> gallons,
        List<String> batches,
        Optional<String> temperature,
        List<HoldPoint> holdPoints,
        List<CoatReadings> coats) {

    public BuiltWall {
        batches = List.copyOf(batches);
        holdPoints = List.copyOf(holdPoints);
        coats = List.copyOf(coats);
    }

    /** Mils of the thinnest places of all coats together; empty where a coat was not read. */
    public Optional<Double> thinnestWet() {
        List<FilmThickness> thin =
                coats.stream().flatMap(coat -> coat.thinnest().stream()).toList();
        return thin.isEmpty() || thin.size() < coats.size()
                ? Optional.empty()
                : Optional.of(thin.stream().mapToDouble(FilmThickness::mils).sum());
    }
}
