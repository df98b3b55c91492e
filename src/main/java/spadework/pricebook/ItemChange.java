// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was changed in an item on one day. The first one may be empty: the item was added then.
 *
 * @param reason why, in the contractor's words
 */
public record ItemChange(LocalDate on, String reason, List<Value> values) {

    /**
     * A value that was changed, spelled as in the book.
     *
     * @param what where it stands in the item, as {@code material/cost}
     * @param from what stood there; empty where nothing did
     * @param to what stands there since; empty where it was taken out
     */
    public record Value(String what, Optional<String> from, Optional<String> to) {}

    public ItemChange {
        values = List.copyOf(values);
    }
}
