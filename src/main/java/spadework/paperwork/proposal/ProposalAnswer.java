// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;

/**
 * What a yes does, and what else could be done.
 *
 * @param contractFirst a yes prepares the contract, and nothing is due before that is signed; otherwise the signed
 *     proposal is the acceptance itself
 * @param alternatives what was considered, doing nothing among them
 * @param next what happens after a yes, in order
 */
public record ProposalAnswer(boolean contractFirst, List<Alternative> alternatives, List<String> next) {

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
