// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import spadework.job.CornerKind;

/**
 * Where a wall of a chain meets the next one.
 *
 * @param footing thickness of the footing where both footings meet, feet
 */
record WallTurn(CornerKind kind, double footing) {

    /** Quarter turns to the right. */
    int quarters() {
        return kind == CornerKind.OUTSIDE ? 1 : 3;
    }
}
