// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.util.List;
import spadework.measure.Length;
import spadework.trench.TrenchLimits;

/** The way out of a trench: 29 CFR 1926.651(c)(2) (T-15) and 1926.1053(b)(1) (T-16). */
public final class LadderRule {
    static final String CITATION = "29 CFR 1926.651(c)(2), 1926.1053(b)(1)";

    /** From this depth on a ladder, a stair or a ramp stands in the trench. */
    public static final Length FROM = TrenchLimits.WAY_OUT_FROM;

    /** How far anybody in the trench walks to it, at the most. */
    public static final Length WITHIN = Length.ofFeet(25);

    /** How far its rails reach above the edge, at the least. */
    public static final Length ABOVE_EDGE = Length.ofFeet(3);

    private LadderRule() {}

    static boolean asks(Length depth) {
        return TrenchLimits.needsWayOut(depth);
    }

    /** What the words of the finding say, key and figure in turn. */
    static List<String> figures() {
        return List.of("within", WITHIN.text(), "above", ABOVE_EDGE.text());
    }
}
