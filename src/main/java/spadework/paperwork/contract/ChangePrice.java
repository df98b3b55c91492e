// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.money.Dollars;

/**
 * What a change does to the price.
 *
 * @param lines what is charged by unit prices; empty when the work is priced as the contract was
 * @param rest what no unit price covers, priced as the contract was; zero without lines
 * @param otherwise what both sides signed beyond the lines and the rest, or less; zero where they are what was signed
 * @param byPath what the same work comes to priced as the contract was, where that is another figure; else empty
 * @param byParts the same part by part; without parts where unit prices are charged
 * @param beforeTax below zero for a credit
 * @param amount the total without a sign
 * @param before contract price before it, with tax
 * @param after contract price once it is accepted
 */
public record ChangePrice(
        List<UnitLineRow> lines,
        Dollars rest,
        Dollars otherwise,
        String byPath,
        ChangeByParts byParts,
        Dollars beforeTax,
        Dollars tax,
        String taxRate,
        Dollars total,
        Dollars amount,
        Dollars before,
        Dollars after) {

    public ChangePrice {
        lines = List.copyOf(lines);
    }

    /** Whether it lowers the price. */
    public boolean isCredit() {
        return total.isNegative();
    }
}
