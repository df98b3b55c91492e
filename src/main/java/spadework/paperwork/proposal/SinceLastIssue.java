// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.work.QuantityChangeRow;

/**
 * What moved since the proposal was issued before.
 *
 * @param date of that issue, in words
 * @param before its total
 * @param after the total now
 * @param sections prices that differ
 * @param quantities those that differ and that a homeowner understands
 */
public record SinceLastIssue(
        String date,
        Dollars before,
        Dollars after,
        List<SectionDifference> sections,
        List<QuantityChangeRow> quantities) {

    /** A section whose price differs; zero where it was not there, or is there no more. */
    public record SectionDifference(String name, Dollars before, Dollars after, Dollars difference) {}

    public SinceLastIssue {
        sections = List.copyOf(sections);
        quantities = List.copyOf(quantities);
    }

    /** After less before. */
    public Dollars difference() {
        return after.minus(before);
    }
}
