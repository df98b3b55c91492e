// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What takes the water. */
public enum OutletKind {
    DAYLIGHT,
    SUMP,
    APPROVED_STORM
}
