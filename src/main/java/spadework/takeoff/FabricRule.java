// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import spadework.measure.Length;

/** How fabric lies over the top of the stone. */
public final class FabricRule {
    /** How far its edges turn up at the wall and at the bank. */
    public static final Length TURN_UP = Length.ofInches(6);

    /** How far a roll lies over the one before it. */
    public static final Length LAP = Length.ofInches(12);

    public static final String SOURCE = "common practice, no source";

    private FabricRule() {}

    /** Both edges that turn up, in feet. */
    static double bothEdges() {
        return 2 * TURN_UP.feet();
    }
}
