// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** How two dug walls meet. */
public enum CornerKind {
    /** The house corner points outward: the trenches leave a square between them that is dug as well. */
    OUTSIDE,
    /** The house turns inward: the two trenches overlap. */
    INSIDE
}
