// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import spadework.ground.BodyKind;
import spadework.ground.DigBody;
import spadework.measure.Length;

/** How wide bodies lie open at grade where they are widest, and what the plan's words call them. */
final class DugWidths {
    private DugWidths() {}

    /** Of a wall's trench, from the wall's face; of any other, from edge to edge. */
    static Length atGrade(DigBody body) {
        int banks = body.kind() == BodyKind.WALL ? 1 : 2;
        return Length.ofFeet(body.width() + banks * body.out(body.deepest().feet()));
    }

    static String name(DigBody body) {
        return switch (body.kind()) {
            case WALL -> "along wall " + body.label();
            case WINDOW_WELL -> "at the wells of wall " + body.label();
            case MAIN -> "along solid pipe " + body.label();
            case ROOF_LINE -> "along roof water pipe " + body.label();
            case DISCHARGE -> "along the discharge pipe of " + body.label();
            case SUMP_PIT -> "at sump " + body.label();
            case TEST_PIT -> "at test pit " + body.label();
        };
    }
}
