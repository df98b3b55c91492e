// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import spadework.ground.DigBody;
import spadework.job.LimitKind;
import spadework.measure.Length;
import spadework.wording.Wording;

/** Every word on the plan that is not the job's own. */
public final class PlanWords {
    private static final Wording WORDS = Wording.beside(PlanWords.class);

    static final String NORTH = "N";
    static final String SCALE = WORDS.get("plan-words.house-and-walls-to");
    static final String DUG_WALL = "Dug wall";
    static final String DUG = "Ground dug";
    static final String DRAIN = "Footing drain";
    static final String MAIN = "Solid pipe";
    static final String ROOF_LINE = "Roof water";
    static final String DOWNSPOUT = "Downspout";
    static final String CLEANOUT = "Cleanout";
    static final String OPTIONAL_WALL = "Optional wall";
    static final String OPTIONAL_PIPE = "Optional pipe";
    static final String OPTIONAL_SENTENCE = WORDS.get("plan-words.optional-only-if-you");
    static final String ADDED_WALL = "Wall added";
    static final String ADDED_PIPE = "Pipe added";
    static final String ADDED_SENTENCE = WORDS.get("plan-words.added-by-this-change");
    static final String TO = " to ";
    static final String STREET = "Street side";
    static final String DOOR = "Front door";
    static final String UNPLACED = "(which side of the house is not written down)";

    private PlanWords() {}

    /** A hole of which the job does not say where it lies. */
    static String unplacedPit(DigBody pit) {
        return WORDS.get(
                "plan-words.pit-place-unknown",
                pit.label(),
                Length.ofFeet(pit.length()).text(),
                Length.ofFeet(pit.width()).text());
    }

    static String limit(LimitKind kind) {
        return switch (kind) {
            case PROPERTY_LINE -> "Lot line";
            case TREE -> "Tree";
            case WALK -> "Walk";
            case NEIGHBOR_FOOTING -> "Neighbor's footing";
            case UTILITY -> "Utility line";
        };
    }
}
