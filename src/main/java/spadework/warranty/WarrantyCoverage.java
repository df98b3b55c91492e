// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.util.List;

/**
 * What a warranty covers.
 *
 * @param notCovered what it does not cover
 */
public record WarrantyCoverage(
        List<CoveredRun> walls, List<CoveredRun> runs, List<CoveredPart> parts, List<String> notCovered) {

    public WarrantyCoverage {
        walls = List.copyOf(walls);
        runs = List.copyOf(runs);
        parts = List.copyOf(parts);
        notCovered = List.copyOf(notCovered);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a warranty without parts");
        }
    }
}
