// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Where the footing drain meets the solid main, seen along the drain. */
public enum TeeAt {
    START,
    MIDDLE,
    END
}
