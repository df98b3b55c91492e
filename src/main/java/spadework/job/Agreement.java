// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;

/**
 * From the homeowner's yes to the last day of the work: what the contract needs to know, what may be chosen, what was
 * accepted, what was changed on the way, what was paid and what was built.
 *
 * @param signing what the contract says beyond the work; empty until it is known
 * @param options work that the homeowner may take or leave
 * @param accepted the homeowner's yes; empty until then
 * @param changes change orders, in the order of their numbers
 * @param received payments that came in
 * @param asBuilt what was built, or was built so far
 * @param closed the end of the work
 */
public record Agreement(
        Optional<Signing> signing,
        List<Option> options,
        Optional<Accepted> accepted,
        List<Change> changes,
        List<Received> received,
        Optional<AsBuilt> asBuilt,
        Optional<Closed> closed) {
    /** Nothing agreed yet. */
    public static final Agreement NONE = new Agreement(
            Optional.empty(), List.of(), Optional.empty(), List.of(), List.of(), Optional.empty(), Optional.empty());

    public Agreement {
        options = List.copyOf(options);
        changes = List.copyOf(changes);
        received = List.copyOf(received);
    }

    /**
     * The option with that label.
     *
     * @throws IllegalArgumentException if there is none; intake has checked every label
     */
    public Option option(String label) {
        return options.stream()
                .filter(option -> option.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no option " + label));
    }

    /** What was built, once the work is finished; a record that is still being written is not yet one of the whole. */
    public Optional<AsBuilt> finishedWork() {
        return asBuilt.filter(built -> built.finished().isPresent());
    }

    /** The change orders that both sides signed, by number. */
    public List<Change> acceptedChanges() {
        return changes.stream()
                .filter(change -> change.state() == ChangeState.ACCEPTED)
                .toList();
    }
}
