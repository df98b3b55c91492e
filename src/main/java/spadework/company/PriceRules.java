// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import io.soabase.recordbuilder.core.RecordBuilder;
import spadework.measure.Percent;
import spadework.money.Dollars;

/**
 * How cost becomes price.
 *
 * @param contingency on direct cost
 * @param overhead the share of overhead, on direct cost with contingency; a firm's own, from its books
 *     (common practice, no source)
 * @param profit a margin or a markup, as {@code basis} says
 * @param minimum the least a job is done for
 * @param step a section's price is rounded to a multiple of this, half up
 * @param leftovers what a job pays of packages that are not used up
 */
@RecordBuilder
public record PriceRules(
        Percent contingency,
        Percent overhead,
        ProfitBasis basis,
        Percent profit,
        Dollars minimum,
        Dollars step,
        Leftovers leftovers)
        implements PriceRulesBuilder.With {}
