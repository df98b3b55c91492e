// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Where a sump's basin stands. */
public enum PitPlace {
    /** In the ground outside the house. */
    OUTSIDE,
    /** In the floor inside. */
    INSIDE,
    /** Nobody said; it is taken as outside. */
    UNKNOWN
}
