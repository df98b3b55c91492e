// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

import java.util.List;
import java.util.Optional;
import spadework.money.Dollars;
import spadework.pricebook.ItemChange;
import spadework.pricing.PricedLine;

/**
 * A line whose price differs between two prices of a bid.
 *
 * @param before the line as it was; empty for a new one
 * @param after the line as it is; empty for one that fell away
 * @param causes why, at least one
 * @param changes what the book says was changed in the item between the two
 */
public record LineMove(
        Optional<PricedLine> before, Optional<PricedLine> after, List<MoveCause> causes, List<ItemChange> changes) {

    public LineMove {
        causes = List.copyOf(causes);
        changes = List.copyOf(changes);
    }

    /** The line, as it is where it still is. */
    public PricedLine line() {
        return after.or(() -> before).orElseThrow();
    }

    public Dollars was() {
        return before.map(PricedLine::price).orElse(Dollars.ZERO);
    }

    public Dollars is() {
        return after.map(PricedLine::price).orElse(Dollars.ZERO);
    }

    /** After less before. */
    public Dollars difference() {
        return is().minus(was());
    }
}
