// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.util.List;
import spadework.money.Dollars;

/**
 * The direct cost of a line by kind, each in whole cents.
 *
 * @param purchaseTax sales tax the contractor pays on the material
 */
public record CostParts(
        Dollars material, Dollars purchaseTax, Dollars labor, Dollars machine, Dollars subcontract, Dollars disposal) {

    /** The direct cost. */
    public Dollars direct() {
        return Dollars.total(List.of(material, purchaseTax, labor, machine, subcontract, disposal));
    }
}
