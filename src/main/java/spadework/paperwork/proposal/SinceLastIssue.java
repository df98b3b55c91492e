// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import java.util.Optional;
import spadework.money.Dollars;
import spadework.paperwork.work.QuantityChangeRow;

/**
 * What moved since the proposal was issued before.
 *
 * @param date of that issue, in words
 * @param before its total
 * @param after the total now
 * @param sections prices that differ
 * @param options prices of options that differ
 * @param unitPrices unit prices that differ
 * @param quantities those that differ and that a homeowner understands
 * @param fromWork what the changed work makes of the difference; empty where nobody knows
 * @param fromPrices what changed prices make of it; empty where nobody knows
 */
public record SinceLastIssue(
        String date,
        Dollars before,
        Dollars after,
        List<SectionDifference> sections,
        List<PromiseDifference> options,
        List<PromiseDifference> unitPrices,
        List<QuantityChangeRow> quantities,
        Optional<Dollars> fromWork,
        Optional<Dollars> fromPrices) {

    /** A section whose price differs; zero where it was not there, or is there no more. */
    public record SectionDifference(String name, Dollars before, Dollars after, Dollars difference) {}

    /**
     * An option or a unit price that differs; empty where it was not offered, or is no more.
     *
     * @param label of an option
     * @param unit of a unit price
     */
    public record PromiseDifference(
            String label, String name, String unit, Optional<Dollars> before, Optional<Dollars> after) {

        /** Whether it stood before and stands now at another price. */
        boolean isMoved() {
            return before.isPresent() && after.isPresent() && !before.equals(after);
        }
    }

    public SinceLastIssue {
        options = List.copyOf(options);
        unitPrices = List.copyOf(unitPrices);
        sections = List.copyOf(sections);
        quantities = List.copyOf(quantities);
    }

    /** After less before. */
    public Dollars difference() {
        return after.minus(before);
    }

    /** What the parts came to, before, that are no row here. */
    public Dollars restBefore() {
        return before.minus(
                Dollars.total(sections.stream().map(SectionDifference::before).toList()));
    }

    /** Whether an option that was offered before has another price now. */
    public boolean isOptionMoved() {
        return options.stream().anyMatch(PromiseDifference::isMoved);
    }

    /** Whether the option of that label is one of them. */
    public boolean isMoved(String label) {
        return options.stream().anyMatch(option -> option.label().equals(label) && option.isMoved());
    }

    /** Whether a unit price that stood before is another now. */
    public boolean isUnitPriceMoved() {
        return unitPrices.stream().anyMatch(PromiseDifference::isMoved);
    }

    /** Whether there are other parts, and they come to the same now; with a tax on the price they may not. */
    public boolean isRestUnchanged() {
        Dollars now = after.minus(
                Dollars.total(sections.stream().map(SectionDifference::after).toList()));
        return !restBefore().isZero() && restBefore().equals(now);
    }
}
