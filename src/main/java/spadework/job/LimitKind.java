// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What limits the room beside a wall. */
public enum LimitKind {
    PROPERTY_LINE,
    TREE,
    WALK,
    NEIGHBOR_FOOTING,
    UTILITY
}
