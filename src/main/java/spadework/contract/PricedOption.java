// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.List;
import spadework.job.Option;
import spadework.money.Dollars;

/**
 * An option with its price: what it adds to the job as proposed, taken alone.
 *
 * @param taken whether the homeowner took it
 */
public record PricedOption(Option option, Sum sum, List<QuantityChange> quantities, boolean taken) {

    public PricedOption {
        quantities = List.copyOf(quantities);
    }

    /** The name that tells it from the other options of the job. */
    String label() {
        return option.label();
    }

    /** Its price with tax. */
    Dollars total() {
        return sum.total();
    }
}
