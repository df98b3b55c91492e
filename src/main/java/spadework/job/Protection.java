// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** How the trench is kept from falling in. */
public enum Protection {
    /** The outer bank is laid back to the slope of the soil type. */
    SLOPED,
    /** The outer bank is cut back in steps, which only soil that holds together can be. */
    BENCHED,
    /** A shield or shoring stands in a trench with an upright bank. */
    SHIELDED,
    /** An upright bank without support. Lawful only in shallow trenches in which nothing shows that it could fall. */
    UPRIGHT
}
