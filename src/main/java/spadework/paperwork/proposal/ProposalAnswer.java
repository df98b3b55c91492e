// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;

/**
 * What else could be done, and what happens after a yes. A yes prepares the contract: 16 CFR 429 reaches a sale at home
 * in every state, and its notices stand in the contract alone.
 *
 * @param alternatives what was considered, doing nothing among them
 * @param next what happens after a yes, in order
 */
public record ProposalAnswer(List<Alternative> alternatives, List<String> next) {

    /**
     * Another way.
     *
     * @param what the way, as {@code Do nothing}
     * @param says what it does, and its price where the job has one
     */
    public record Alternative(String what, String says) {}

    public ProposalAnswer {
        alternatives = List.copyOf(alternatives);
        next = List.copyOf(next);
    }
}
