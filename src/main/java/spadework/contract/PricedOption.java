// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.List;
import spadework.job.Option;

/**
 * An option with its price: what it adds to the job as proposed, taken alone.
 *
 * @param taken whether the homeowner took it
 */
public record PricedOption(Option option, Sum sum, List<QuantityChange> quantities, boolean taken) {

    public PricedOption {
        quantities = List.copyOf(quantities);
    }
}
