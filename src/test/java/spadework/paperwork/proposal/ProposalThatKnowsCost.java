// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import spadework.money.Dollars;
import spadework.pricing.CostParts;

/** A breach of the wall between the homeowner's papers and cost, for the test that it is reported. */
public record ProposalThatKnowsCost(CostParts cost) {

    /** What no proposal may say. */
    public Dollars direct() {
        return cost.direct();
    }
}
