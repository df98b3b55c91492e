// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.util.List;
import spadework.money.Dollars;

/**
 * Contract, accepted changes, payments, balance.
 *
 * @param contracted the day on which the contract was accepted, in words
 * @param options the options in it, by label
 * @param total contract and changes
 * @param waived why an open balance is waived; empty where it is not
 * @param over what was paid too much; zero where nothing was
 */
public record FinalAccount(
        String contracted,
        List<String> options,
        Dollars contract,
        List<AccountRow> changes,
        Dollars total,
        List<AccountRow> received,
        Dollars paid,
        Dollars balance,
        Dollars over,
        String waived) {

    public FinalAccount {
        options = List.copyOf(options);
        changes = List.copyOf(changes);
        received = List.copyOf(received);
    }

    /** Whether everything was paid, to the cent. */
    public boolean isSettled() {
        return balance.isZero();
    }
}
