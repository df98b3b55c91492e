// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

/** The steps of a job in the order of the scope of work. */
public enum WorkStep {
    /** The permit; where there is one the inspector sees the coating before it is covered. */
    PERMIT,
    /** The engineer's visit; the start waits for it. */
    ENGINEER,
    SET_UP,
    DIG,
    /** Keeping water out of the open trench; a pump is on site for it. */
    DEWATER,
    PREPARE_WALL,
    COAT,
    /** Pipes away from the house; they fill the wait while the coating cures. */
    PIPES,
    DRAIN,
    BACKFILL,
    RESTORE,
    CLEAN_UP
}
