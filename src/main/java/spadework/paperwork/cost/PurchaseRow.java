// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * A line of the purchase list.
 *
 * @param stock what of it goes to the contractor's stock; empty where the job pays for all that is left over
 */
public record PurchaseRow(
        String code,
        String name,
        String net,
        String waste,
        BigDecimal packages,
        String sold,
        String working,
        Optional<Stock> stock) {

    /**
     * What is left over of whole packages and not charged to the job.
     *
     * @param left over in all, in the unit of the material
     * @param kept of its cost that the contractor carries
     */
    public record Stock(String left, Dollars kept) {}
}
