// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Water seen in the soil of the trench. */
public enum Seepage {
    NONE,
    DAMP,
    FREE,
    UNKNOWN
}
