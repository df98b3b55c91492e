// SPDX-License-Identifier: Apache-2.0
package spadework.buying;

import java.time.LocalDate;
import java.util.List;

/**
 * What comes on one day.
 *
 * @param on the working day before the first of it is used; for sod, the day on which it is laid
 * @param orderBy the last day to order it: the longest lead of its lines before
 */
public record Delivery(LocalDate on, LocalDate orderBy, List<OrderLine> lines) {

    public Delivery {
        lines = List.copyOf(lines);
    }
}
