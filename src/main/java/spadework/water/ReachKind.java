// SPDX-License-Identifier: Apache-2.0
package spadework.water;

/** What a pipe is for. */
public enum ReachKind {
    /** Perforated, beside the footing. */
    DRAIN,
    /** Solid, carries the drains' water away. */
    MAIN,
    /** Solid, carries roof water on its own. */
    ROOF_LINE,
    /** Solid, under the pump's pressure. */
    SUMP_DISCHARGE
}
