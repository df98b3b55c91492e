// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** How a trench ends where no other trench goes on from it. */
public enum EndKind {
    /** In the open: the end is laid back like the bank. */
    OPEN,
    /** A shield or shoring closes it, so it stands upright. */
    SHIELDED,
    /** A wall, a footing or a slab closes it: nothing is dug beyond. */
    AGAINST_SOMETHING,
    /** A ramp leads down into the trench. */
    RAMP,
    /** Nobody looked; it is taken as open. */
    UNKNOWN
}
