// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.List;
import spadework.money.Dollars;

/**
 * The price that was agreed beside the cost of the agreed work, for the contractor only. Prices are before sales tax.
 *
 * @param proposed the proposal without options
 * @param parts options taken and change orders signed
 * @param contracted contract price with the options taken and its sales tax, before any change order
 * @param figured what proposal and parts come to where each change is figured today by its own rule
 * @param price proposal and parts
 * @param cost direct cost of the agreed work with contingency and overhead
 * @param left what is left of the price
 * @param share the same as a share of the price, as {@code 12.1%}
 * @param withoutCost changes that charge wall by the foot and do not have that wall, so that its cost is not known
 */
public record AgreedMargin(
        Dollars proposed,
        List<Part> parts,
        Dollars contracted,
        Dollars figured,
        Dollars price,
        Dollars tax,
        Dollars total,
        Dollars cost,
        Dollars left,
        String share,
        List<String> withoutCost) {

    /**
     * An option or a change order.
     *
     * @param agreed its agreed price
     * @param figured what it is figured at today
     */
    public record Part(String name, Dollars agreed, Dollars figured, Dollars difference) {}

    public AgreedMargin {
        parts = List.copyOf(parts);
        withoutCost = List.copyOf(withoutCost);
    }
}
