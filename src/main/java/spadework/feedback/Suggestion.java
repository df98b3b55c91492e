// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import java.util.List;

/**
 * A rate that jobs say is another one than the book's.
 *
 * @param what where the rate stands in the item, as {@code labor/perHour}
 * @param from as the book spells it
 * @param to as the book would
 * @param evidence the jobs it is drawn from, oldest first
 */
public record Suggestion(
        String code, String name, String what, String from, String to, RateRule rule, List<Evidence> evidence) {

    /**
     * One job.
     *
     * @param rate what it took, spelled as the book does
     */
    public record Evidence(String job, String finished, String soil, String rate) {}

    public Suggestion {
        evidence = List.copyOf(evidence);
    }

    /** The reason that the book keeps, with the jobs by number. */
    public String reason() {
        String how = rule == RateRule.MEDIAN ? "median of the last jobs" : "a quarter step for each job";
        return how + ": "
                + String.join(
                        ", ",
                        evidence.stream()
                                .map(one -> one.job() + " " + one.rate())
                                .toList());
    }
}
