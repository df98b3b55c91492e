// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.List;
import spadework.job.ChangeState;
import spadework.money.Dollars;
import spadework.pricing.Due;
import spadework.pricing.OfferedPrice;

/**
 * A job's price from the proposal to now. The contract price is the price as proposed and the options taken; accepted
 * changes move it, pending and declined ones never do.
 *
 * @param proposed the price of the job as proposed, without options
 * @param options every option, taken or not
 * @param payments the contract price in installments
 * @param changes change orders by number
 */
public record Contract(
        OfferedPrice proposed, List<PricedOption> options, List<Due> payments, List<PricedChange> changes) {

    public Contract {
        options = List.copyOf(options);
        payments = List.copyOf(payments);
        changes = List.copyOf(changes);
    }

    /** Price and tax of what was signed: the proposal with the options taken. */
    public Sum contracted() {
        List<Sum> taken = taken().stream().map(PricedOption::sum).toList();
        return new Sum(proposed.price(), proposed.tax()).plus(Sum.of(taken));
    }

    /** The same with every accepted change. */
    public Sum now() {
        return contracted()
                .plus(Sum.of(accepted().stream().map(PricedChange::agreed).toList()));
    }

    /** What the homeowner pays in all, as things stand. */
    public Dollars total() {
        return now().total();
    }

    /** The options that the homeowner took. */
    public List<PricedOption> taken() {
        return options.stream().filter(PricedOption::taken).toList();
    }

    /** The change orders that both sides signed. */
    public List<PricedChange> accepted() {
        return changes.stream()
                .filter(change -> change.change().state() == ChangeState.ACCEPTED)
                .toList();
    }
}
