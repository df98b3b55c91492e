// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Optional;
import spadework.measure.Percent;
import spadework.measure.Volume;

/**
 * What is known of some soil.
 *
 * @param swell bank to loose, on bank volume, 0 or more
 * @param shrink bank to compacted, on bank volume, 0 or more and under 100%
 * @param load what a truck takes, loose; the book's when it is left out
 */
public record EarthInputs(
        Optional<Volume> bank,
        Optional<Volume> loose,
        Optional<Volume> compacted,
        Optional<Percent> swell,
        Optional<Percent> shrink,
        Optional<Volume> load) {}
