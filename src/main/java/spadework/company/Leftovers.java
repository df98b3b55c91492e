// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import spadework.measure.Percent;

/**
 * What a job pays of whole packages that are not used up.
 *
 * @param jobBears share of what is left over that the job pays, 0 to 100%
 */
public record Leftovers(LeftoverRule rule, Percent jobBears) {
    /** Every package that is opened is the job's. */
    public static final Leftovers CHARGED = new Leftovers(LeftoverRule.CHARGED_TO_THE_JOB, Percent.of("100"));

    /** What is left over goes to stock. */
    public static final Leftovers STOCK = new Leftovers(LeftoverRule.CARRIED_TO_STOCK, Percent.ZERO);
}
