// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.work.AlteredWork;
import spadework.paperwork.work.QuantityChangeRow;

/**
 * An option as the proposal offers it.
 *
 * @param quantities the measured quantities that a homeowner understands
 * @param price before tax; below zero where it saves
 * @param tax sales tax on it; zero where none is collected
 * @param total with tax
 * @param amount the total without a sign
 * @param leftover whether it uses what this work leaves over of packages that are bought whole
 */
public record OptionOffer(
        String label,
        String title,
        String why,
        AlteredWork work,
        List<QuantityChangeRow> quantities,
        Dollars price,
        Dollars tax,
        Dollars total,
        Dollars amount,
        boolean leftover) {

    public OptionOffer {
        quantities = List.copyOf(quantities);
    }

    /** Whether it saves. */
    public boolean saves() {
        return total.isNegative();
    }
}
