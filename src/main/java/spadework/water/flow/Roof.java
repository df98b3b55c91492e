// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/** Water from a roof: 0.0104 gpm for each square foot and inch an hour (H-18). */
public final class Roof {
    private static final String CODE = "IPC 1106 and NSPC App. A, 0.0104 (H-18)";

    private Roof() {}

    /** Flow in gpm from a roof's plan area in square feet, as the codes round the factor. */
    public static Worked flow(Working area, Working rain) {
        return Worked.of(
                "Qr",
                "roof water",
                0.0104 * area.number() * rain.number(),
                Unit.GALLON_PER_MINUTE,
                new Formula("0.0104 × " + area.symbol() + " × " + rain.symbol(), CODE),
                area,
                rain);
    }

    /** Plan area in square feet whose water a flow in gpm carries. */
    public static Worked area(Working gpm, Working rain) {
        return Worked.of(
                "Ar",
                "roof area",
                gpm.number() / (0.0104 * rain.number()),
                Unit.SQUARE_FOOT,
                new Formula(gpm.symbol() + " ÷ (0.0104 × " + rain.symbol() + ")", CODE),
                gpm,
                rain);
    }
}
