// SPDX-License-Identifier: Apache-2.0
package spadework.buying;

import java.util.List;
import spadework.money.Dollars;

/**
 * What is ordered from one supplier, by the days on which it comes.
 *
 * @param supplier blank for what nobody said where to buy
 */
public record PurchaseOrder(String supplier, List<Delivery> deliveries) {

    public PurchaseOrder {
        deliveries = List.copyOf(deliveries);
    }

    /** What it comes to by our book, before sales tax. */
    public Dollars total() {
        return Dollars.total(deliveries.stream()
                .flatMap(delivery -> delivery.lines().stream())
                .map(OrderLine::amount)
                .toList());
    }
}
