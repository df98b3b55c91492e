// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** The side of the house that a wall faces. */
public enum Side {
    NORTH,
    EAST,
    SOUTH,
    WEST
}
