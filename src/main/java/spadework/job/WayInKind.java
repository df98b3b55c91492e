// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** How people get into the house and out of it while the ground along its walls is open. */
public enum WayInKind {
    /** Over the trench, on a walkway with rails. */
    BRIDGE,
    /** By a door on a side along which nothing is dug. */
    SIDE_NOT_DUG,
    /** The wall at the door is dug only after another side is filled and can be walked on. */
    WALL_LAST
}
