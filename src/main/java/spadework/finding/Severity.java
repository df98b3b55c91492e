// SPDX-License-Identifier: Apache-2.0
package spadework.finding;

/** How grave a finding is, gravest first. */
public enum Severity {
    /** No proposal is issued until it is fixed or somebody accepts it in writing. */
    STOP,
    /** Has to be done on this job. */
    MUST,
    /** Worth knowing or doing. */
    ADVISE
}
