// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.List;
import spadework.money.Dollars;

/**
 * Work that findings ask for and no line of the job pays for. Somebody does it, so it takes from what the job leaves.
 *
 * @param items what it is, with how much of it
 * @param price what the book would ask for it
 * @param cost its cost with contingency and overhead
 * @param left what the price of the job leaves once that is done without pay
 * @param share the same as a share of the price, as {@code 6.6%}
 * @param unknown what of it the book has no price for, and what is left is less by its cost
 */
public record UnpricedWork(
        List<String> items, Dollars price, Dollars cost, Dollars left, String share, List<String> unknown) {

    public UnpricedWork {
        items = List.copyOf(items);
        unknown = List.copyOf(unknown);
    }
}
