// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Where an item's prices come from, and how long they hold.
 *
 * @param goodUntil the last day on which its prices hold; empty where nobody said
 * @param retired since when it is retired; it stays readable for bids that use it
 * @param history what was changed in it, oldest first
 * @param notes for the contractor only
 * @param supplier where its material is bought
 */
public record ItemUpkeep(
        Source source,
        Optional<LocalDate> goodUntil,
        Optional<Retirement> retired,
        List<ItemChange> history,
        List<String> notes,
        Supplier supplier) {

    public ItemUpkeep {
        history = List.copyOf(history);
        notes = List.copyOf(notes);
    }

    /** One that nobody said where to buy. */
    public ItemUpkeep(
            Source source,
            Optional<LocalDate> goodUntil,
            Optional<Retirement> retired,
            List<ItemChange> history,
            List<String> notes) {
        this(source, goodUntil, retired, history, notes, Supplier.UNKNOWN);
    }
}
