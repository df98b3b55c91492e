// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

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
public record ItemCost(
        Optional<Material> material, Optional<Labor> labor, Optional<Dollars> subcontract, Optional<Dollars> disposal) {

    ItemCost withLabor(UnaryOperator<Labor> change) {
        return new ItemCost(material, labor.map(change), subcontract, disposal);
    }

    ItemCost changedBy(PriceChange change) {
        Optional<Material> bought =
                material.map(m -> change.materialCost().map(m::at).orElse(m));
        return new ItemCost(bought, labor, change.subcontract().or(() -> subcontract), disposal);
    }
}
