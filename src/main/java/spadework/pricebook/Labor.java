// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.company.WorkCondition;

/**
 * Who does a line item, how fast.
 *
 * @param crew name of the company's crew
 * @param perHour units of the item that the crew does in an hour
 * @param machine name of the company's machine that runs meanwhile
 * @param slowedBy conditions under which it takes longer
 * @param digs how its machine digs; where the company knows that machine's bucket and cycles, its pace is worked from
 *     them instead of {@code perHour}. Empty for a pace that stands in the book alone
 */
@RecordBuilder
public record Labor(
        String crew, BigDecimal perHour, Optional<String> machine, List<WorkCondition> slowedBy, Optional<DigKind> digs)
        implements LaborBuilder.With {

    public Labor {
        slowedBy = List.copyOf(slowedBy);
    }

    /** The same work at another pace. */
    public Labor at(BigDecimal pace) {
        return withPerHour(pace);
    }

    /** The same work done by another crew. */
    Labor by(String other) {
        return withCrew(other);
    }
}
