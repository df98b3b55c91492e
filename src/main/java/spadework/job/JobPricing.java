// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;

/**
 * What of the price one job decides for itself.
 *
 * @param items put in by hand, beside what follows the measures
 * @param priceChanges where the price book's cost does not hold on this job
 * @param taxClass what kind of work it is for sales tax, by the company's own names; empty for its usual one
 */
@RecordBuilder
public record JobPricing(List<ExtraItem> items, List<PriceChange> priceChanges, Optional<String> taxClass)
        implements JobPricingBuilder.With {

    public JobPricing {
        items = List.copyOf(items);
        priceChanges = List.copyOf(priceChanges);
    }
}
