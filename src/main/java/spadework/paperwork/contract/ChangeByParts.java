// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.money.Dollars;

/**
 * A change priced as the contract was: what each part of the work costs more or less with it.
 *
 * @param parts the parts whose price moves
 * @param otherwise what both sides signed beyond these parts, or less; zero where they are what was signed
 * @param unfit in sentences, why the contract's price for a foot of wall does not fit an added wall
 */
public record ChangeByParts(List<Part> parts, Dollars otherwise, List<String> unfit) {

    /** A part of the work; zero where it was not there, or is there no more. */
    public record Part(String name, Dollars before, Dollars after, Dollars difference) {}

    public ChangeByParts {
        parts = List.copyOf(parts);
        unfit = List.copyOf(unfit);
    }
}
