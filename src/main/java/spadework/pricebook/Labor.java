package spadework.pricebook;

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
 */
public record Labor(String crew, BigDecimal perHour, Optional<String> machine, List<WorkCondition> slowedBy) {

    public Labor {
        slowedBy = List.copyOf(slowedBy);
    }
}
