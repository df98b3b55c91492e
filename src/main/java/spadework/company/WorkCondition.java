// SPDX-License-Identifier: Apache-2.0
package spadework.company;

/** A condition that slows work down. */
public enum WorkCondition {
    /** The trench is deeper than 5 ft. */
    DEEP,
    /** The soil is clay and water seeps or stands. */
    WET_CLAY,
    /** Only hand tools reach the wall. */
    NARROW
}
