// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What the cleaned wall gets. */
public enum FinishSystem {
    COATING,
    SHEET,
    PARGE
}
