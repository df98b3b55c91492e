// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/**
 * How deep a wall is dug: straight between its ends.
 *
 * @param start grade to the top of the footing at the start
 * @param end the same at the end
 */
public record WallDepth(Length start, Length end) {

    Length deepest() {
        return start.compareTo(end) >= 0 ? start : end;
    }

    WallDepth plus(Length more) {
        return new WallDepth(start.plus(more), end.plus(more));
    }
}
