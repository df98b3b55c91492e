// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.util.Map;
import java.util.Optional;

/**
 * How a supplier's price list is read.
 *
 * @param sheet of a workbook; its first one where it is left out
 * @param headRow the row with the heads of the columns, from 1
 * @param code head of the column with the supplier's numbers
 * @param price head of the column with the prices
 * @param goodUntil head of the column that says until when a price is good
 * @param what the value of our item that the price goes to, as {@code material/cost}
 * @param items our item's code by the supplier's number
 */
public record SupplierMap(
        Optional<String> sheet,
        int headRow,
        String code,
        String price,
        Optional<String> goodUntil,
        String what,
        Map<String, String> items) {

    public SupplierMap {
        items = Map.copyOf(items);
    }
}
