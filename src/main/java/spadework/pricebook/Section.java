// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.util.Arrays;
import java.util.List;
import spadework.wording.Wording;

/** The heading under which a line item is priced. Its name is what a job writes and what price and takeoff print. */
public enum Section {
    /** The wall that the quantity belongs to: one section a wall. */
    WALL("wall"),
    /** Footing drain, solid main, outlet or sump. */
    DRAIN("drain"),
    /** Downspouts and their own line. */
    ROOF_WATER("roof water"),
    /** Haul, import, grading, planting. */
    GROUND("ground"),
    /** Getting there, permits, protection, leaving. */
    SETUP("setup");

    private static final Wording WORDS = Wording.beside(Section.class);

    private final String label;

    Section(String label) {
        this.label = label;
    }

    /** The labels of all sections that are no wall's, in the order of the price. */
    public static List<String> labelsBesideWalls() {
        return Arrays.stream(values())
                .filter(section -> section != WALL)
                .map(Section::label)
                .toList();
    }

    /** As a job or a price book writes it. */
    public String label() {
        return label;
    }

    /** As price and takeoff print it. */
    public String heading() {
        return WORDS.get("section." + label.replace(' ', '-'));
    }
}
