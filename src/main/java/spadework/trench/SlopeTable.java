// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import spadework.job.SoilType;

/**
 * The steepest bank that may stand open without support, as horizontal run for one of rise: 29 CFR 1926 Subpart P
 * Appendix B, Table B-1, for trenches of 20 ft or less (T-09, {@link TrenchLimits#ENGINEER_OVER}), and
 * 1926.652(b)(1) for soil nobody has classed (T-11).
 */
public final class SlopeTable {

    /** Where the table stands. */
    public static final String SOURCE = "29 CFR 1926 Subpart P App. B Table B-1";

    private SlopeTable() {}

    /**
     * Horizontal for each vertical, 0 for an upright bank. Soil that nobody has classed gets the flattest slope.
     *
     * @param type soil type as the competent person classed it
     */
    public static double run(SoilType type) {
        return switch (type) {
            case STABLE_ROCK -> 0;
            case A -> 0.75;
            case B -> 1.0;
            case C, NOT_CLASSED -> 1.5;
        };
    }
}
