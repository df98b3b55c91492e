// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import spadework.measure.Unit;

/** What the quantities of an assembly follow, counted for the section under which a job puts it. */
public enum Driver {
    /** Length of the wall; all walls in a section that is no wall's. */
    FOOT_OF_WALL(Unit.FOOT),
    /** Length of the trench at its center line; all trenches at walls in a section that is no wall's. */
    FOOT_OF_TRENCH(Unit.FOOT),
    /** Corners between two dug walls; a wall has those in which it is named first. */
    CORNER(Unit.EACH),
    /** Downspouts of the job. */
    DOWNSPOUT(Unit.EACH),
    /** Once. */
    JOB(Unit.EACH);

    private final Unit unit;

    Driver(Unit unit) {
        this.unit = unit;
    }

    /** The unit in which it is counted. */
    public Unit unit() {
        return unit;
    }
}
