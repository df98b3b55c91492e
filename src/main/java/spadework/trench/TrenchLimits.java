// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import spadework.measure.Length;

/** Depths and distances at which the rules for trenches change; each stands here alone. */
public final class TrenchLimits {
    /**
     * Deeper than this an engineer designs the protection (29 CFR 1926.652(b), App. F, T-14). The standard's figures
     * and decision charts hold for excavations 20 feet or less, so a trench of exactly 20 ft still follows the table.
     */
    public static final Length ENGINEER_OVER = Length.ofFeet(20);

    /** From this depth on a ladder, a stair or a ramp stands in it (29 CFR 1926.651(c)(2), T-15). */
    public static final Length WAY_OUT_FROM = Length.ofFeet(4);

    /** Soil that was dug and machines stay so far back from the edge (29 CFR 1926.651(j)(2), T-17). */
    public static final Length SPOIL_BACK = Length.ofFeet(2);

    private TrenchLimits() {}

    /** Whether a trench that deep has a ladder, a stair or a ramp. */
    public static boolean needsWayOut(Length depth) {
        return depth.feet() >= WAY_OUT_FROM.feet() - Bank.HAIR;
    }

    /** Whether an engineer designs the protection of a trench that deep, from grade to its bottom. */
    public static boolean isEngineered(Length depth) {
        return depth.feet() > ENGINEER_OVER.feet() + Bank.HAIR;
    }
}
