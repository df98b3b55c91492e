// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import spadework.ground.BodyKind;
import spadework.ground.DigBody;
import spadework.measure.Length;

/** How wide bodies lie open at grade where they are widest. */
final class DugWidths {
    private DugWidths() {}

    /** Of a wall's trench, from the wall's face; of any other, from edge to edge. */
    static Length atGrade(DigBody body) {
        int banks = body.kind() == BodyKind.WALL ? 1 : 2;
        return Length.ofFeet(body.width() + banks * body.out(body.deepest().feet()));
    }
}
