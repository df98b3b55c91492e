// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import java.util.function.UnaryOperator;
import spadework.job.PriceChange;
import spadework.money.Dollars;

/**
 * What one unit of an item costs.
 *
 * @param subcontract a subcontractor's or fee's price a unit
 * @param disposal tipping a unit
 */
@RecordBuilder
public record ItemCost(
        Optional<Material> material, Optional<Labor> labor, Optional<Dollars> subcontract, Optional<Dollars> disposal)
        implements ItemCostBuilder.With {

    ItemCost worked(UnaryOperator<Labor> change) {
        return withLabor(labor.map(change));
    }

    ItemCost changedBy(PriceChange change) {
        Optional<Material> bought =
                material.map(m -> change.materialCost().map(m::at).orElse(m));
        return new ItemCost(bought, labor, change.subcontract().or(() -> subcontract), disposal);
    }
}
