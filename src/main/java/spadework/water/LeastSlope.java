// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.working.Listed;

/**
 * The least slope of a pipe. Solid pipe by its size: 1/4 in a foot to 2-1/2 in, 1/8 in to 6 in, 1/16 in from 8 in
 * (Chicago Table 18-29-704.1, as IPC 704.1; G-03). Perforated pipe has a target and two floors.
 */
public final class LeastSlope {
    /** What a footing drain is laid to where there is room for it; common practice, no source. */
    public static final double DRAIN_TARGET = 0.01;

    /** Flatter than this a footing drain holds water in every sag; common practice, no source. */
    public static final double DRAIN_FLOOR = 0.005;

    /** The published floor for subdrains, 0.15 ft in 100 ft (UFC 3-270-04 section 12.6; H-09). */
    public static final double DRAIN_PUBLISHED_FLOOR = 0.0015;

    /** Where the table for solid pipe stands. */
    public static final String SOLID_SOURCE = "IPC 704.1 as in Chicago Table 18-29-704.1";

    private LeastSlope() {}

    /** For solid pipe; a size between two rows of the table takes the steeper. */
    public static Listed solid(Pipe pipe) {
        double inches = pipe.nominal().inches();
        double anEighth = inches < 8 - 1e-9 ? 0.125 : 0.0625;
        double perFoot = inches < 3 - 1e-9 ? 0.25 : anEighth;
        return Listed.of("Sm", "least slope for its size", perFoot / 12, Unit.FOOT_PER_FOOT, SOLID_SOURCE + " (G-03)");
    }

    /** For a footing drain. */
    public static Listed drain() {
        return Listed.of(
                "Sm",
                "least slope of a footing drain",
                DRAIN_FLOOR,
                Unit.FOOT_PER_FOOT,
                "common practice, no source; published floor 0.15%, UFC 3-270-04 section 12.6 (H-09)");
    }
}
