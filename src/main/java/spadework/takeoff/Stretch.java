// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.util.List;
import spadework.company.WorkCondition;

/**
 * A part of a line's work that is done under the same conditions.
 *
 * @param share of the line's quantity, above 0 and at most 1; the stretches of a line add to 1
 * @param conditions that slow the work there
 */
public record Stretch(BigDecimal share, List<WorkCondition> conditions) {

    public Stretch {
        conditions = List.copyOf(conditions);
    }

    /** All of a line under the same conditions. */
    static List<Stretch> whole(List<WorkCondition> conditions) {
        return List.of(new Stretch(BigDecimal.ONE, conditions));
    }
}
