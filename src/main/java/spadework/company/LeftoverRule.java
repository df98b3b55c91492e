// SPDX-License-Identifier: Apache-2.0
package spadework.company;

/** Who pays for what is left over of whole packages. */
public enum LeftoverRule {
    /** The job pays for every package that is opened. */
    CHARGED_TO_THE_JOB,
    /** The job pays for what it takes, waste included; the rest goes to stock at its cost. */
    CARRIED_TO_STOCK,
    /** The job pays a share of what is left over, the company the rest. */
    SHARED
}
