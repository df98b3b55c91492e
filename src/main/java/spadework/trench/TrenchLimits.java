// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import spadework.measure.Length;

/** Depths and distances at which the rules for trenches change; each stands here alone. */
public final class TrenchLimits {
    /**
     * Deeper than this a registered professional engineer designs the protection, be it a slope, a bench, a shield or
     * shoring (29 CFR 1926.652(b) and (c), Subpart P App. F, T-14). The appendix and the figures of App. B hold for
     * excavations 20 ft or less and the note to Table B-1 asks for the engineer over 20 ft, so a trench of exactly
     * 20 ft still follows the table although its head says less than 20.
     */
    public static final Length ENGINEER_OVER = Length.ofFeet(20);

    /** Where that stands; the options of each paragraph by their numbers are from memory. */
    public static final String ENGINEER_SOURCE =
            "29 CFR 1926.652(b)(4) and (c)(4) (from memory); 29 CFR 1926 Subpart P App. B and App. F";

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
