// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.List;
import spadework.job.Alteration;
import spadework.job.Change;
import spadework.money.Dollars;

/**
 * A change order with its price.
 *
 * @param before contract price before it, with any sales tax
 * @param figured what it comes to by agreed unit prices or by the path of the job
 * @param agreed what counts: the signed price of an accepted one, the figured one of any other
 * @param after contract price once it is accepted
 * @param lines what is charged by unit prices, as the change names them or as they fit it; empty when the alteration
 *     is priced by the path
 * @param rest what no unit price covers, by the path; zero where there are no lines
 * @param byPath what all of it comes to by the path of the job
 * @param sections what each section's price moves by along that path
 * @param unfit added walls that the price for a foot of wall does not fit
 */
public record PricedChange(
        Change change,
        Dollars before,
        Sum figured,
        Sum agreed,
        Dollars after,
        List<UnitLine> lines,
        Dollars rest,
        Sum byPath,
        List<QuantityChange> quantities,
        List<IssueDifference.SectionMove> sections,
        List<UnfitWall> unfit) {

    public PricedChange {
        lines = List.copyOf(lines);
        quantities = List.copyOf(quantities);
        sections = List.copyOf(sections);
        unfit = List.copyOf(unfit);
    }

    /** Whether the path gives another figure for the same work than the unit prices do. */
    public boolean isOtherwiseByPath() {
        return !lines.isEmpty() && !change.alteration().equals(Alteration.NONE) && !byPath.equals(figured);
    }
}
