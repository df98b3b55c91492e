// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.List;

/**
 * A quantity with the items that the job chose for it.
 *
 * @param codes chosen line items; empty for the book's standard ones
 */
public record Driven(Quantity quantity, List<String> codes, List<Stretch> stretches) {

    public Driven {
        codes = List.copyOf(codes);
        stretches = List.copyOf(stretches);
    }
}
