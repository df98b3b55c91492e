// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.Optional;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;

/** A paper that asks an item for a bare amount of cost, for the test that it is reported. */
public record ProposalThatAsksForItems(LineItem item) {

    /** What the subcontractor gets. */
    public Optional<Dollars> paid() {
        return item.subcontract();
    }
}
