// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What of a wall's condition nobody has looked at. It is never taken as sound. */
public enum Unseen {
    CRACKS,
    HORIZONTAL_CRACK,
    DISPLACED,
    FOOTING
}
