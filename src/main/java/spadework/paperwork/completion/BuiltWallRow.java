// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.util.List;
import java.util.stream.Stream;

/**
 * A wall as built beside the wall as agreed. What was not recorded is empty.
 *
 * @param depth grade to footing top
 */
public record BuiltWallRow(
        String label,
        String where,
        AgreedAndBuilt length,
        AgreedAndBuilt depth,
        String finish,
        BuiltCoat coat,
        BuiltFilm film,
        List<HoldRow> holdPoints) {

    public BuiltWallRow {
        holdPoints = List.copyOf(holdPoints);
    }

    /**
     * A point at which work stopped until somebody had looked.
     *
     * @param number 1 for the footing and the bare wall, 2 for what was put on it; 0 where the record names none
     * @param what what was looked at
     * @param on in words
     * @param photo number of the photo; 0 where there is none
     * @param waived why there is none, where somebody answers for it; else empty
     */
    public record HoldRow(int number, String what, String on, String by, int photo, String waived) {}

    /** The hold points of the scope that the record lacks, 1 and 2. */
    public List<Integer> openPoints() {
        return Stream.of(1, 2)
                .filter(number -> holdPoints.stream().noneMatch(point -> point.number() == number))
                .toList();
    }
}
