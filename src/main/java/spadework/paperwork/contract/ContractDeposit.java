// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * What is paid at signing.
 *
 * @param numbers numbers of the payments that are due at signing
 * @param amount what they come to
 * @param specialOrder cost of material that has to be ordered before the work starts; empty where there is none
 * @param held where the money is kept; empty where nothing is said
 * @param inStep whether no later payment runs ahead of the work, by the shares of the work that the schedule names
 */
public record ContractDeposit(
        List<Integer> numbers, Dollars amount, Optional<Dollars> specialOrder, String held, boolean inStep) {

    public ContractDeposit {
        numbers = List.copyOf(numbers);
    }
}
