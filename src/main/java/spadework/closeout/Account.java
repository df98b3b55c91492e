// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import java.util.List;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.job.Received;
import spadework.money.Dollars;

/**
 * The final account: contract, accepted changes, payments received.
 *
 * @param contract the contract price with the options taken and any sales tax
 */
public record Account(Dollars contract, List<PricedChange> changes, List<Received> received) {

    public Account {
        changes = List.copyOf(changes);
        received = List.copyOf(received);
    }

    public static Account of(Contract contract, List<Received> received) {
        return new Account(contract.contracted().total(), contract.accepted(), received);
    }

    /** What accepted changes add; below zero where they take away. */
    public Dollars changed() {
        return Dollars.total(
                changes.stream().map(change -> change.agreed().total()).toList());
    }

    /** Contract and changes. */
    public Dollars total() {
        return contract.plus(changed());
    }

    /** What came in. */
    public Dollars paid() {
        return Dollars.total(received.stream().map(Received::amount).toList());
    }

    /** What is still due; below zero where too much was paid. */
    public Dollars balance() {
        return total().minus(paid());
    }
}
