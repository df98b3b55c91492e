// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spadework.measure.FilmThickness;

/**
 * What a gauge read on one coat of a wall while it was wet.
 *
 * @param number of the coat, from 1
 * @param wet readings, in the order in which they were taken
 */
public record CoatReadings(int number, List<FilmThickness> wet) {

    public CoatReadings {
        wet = List.copyOf(wet);
    }

    /** The thinnest place that was read; empty without readings. */
    public Optional<FilmThickness> thinnest() {
        return wet.stream().min(Comparator.comparing(FilmThickness::mils));
    }
}
