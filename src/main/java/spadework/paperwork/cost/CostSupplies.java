// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.List;

/** What the job takes: material to buy, hours of crews. */
public record CostSupplies(List<PurchaseRow> purchases, List<CrewRow> crews) {

    public CostSupplies {
        purchases = List.copyOf(purchases);
        crews = List.copyOf(crews);
    }
}
