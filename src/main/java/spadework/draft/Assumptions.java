// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that a job is still priced by without being written.
 *
 * @param all in the order of the form
 * @param filled the job with all of it, to be priced and never to be saved
 */
public record Assumptions(List<Assumption> all, Draft filled) {

    public Assumptions {
        all = List.copyOf(all);
    }

    /** None yet, for a draft as it stands. */
    static Assumptions none(Draft draft) {
        return new Assumptions(List.of(), draft);
    }

    /** With one more, where nothing is written at its place. */
    Assumptions and(String place, String value, Assumption.Kind kind) {
        if (value.isEmpty()
                || filled.at(place).isPresent()
                || !filled.shown(place).isEmpty()) {
            return this;
        }
        List<Assumption> more = new ArrayList<>(all);
        more.add(new Assumption(place, value, kind));
        return new Assumptions(more, filled.typed(place, value));
    }

    /** What is assumed at a place, or in a group that has it. */
    public Optional<Assumption> at(String place) {
        return all.stream()
                .filter(one -> Pointer.isIn(one.place(), place) || Pointer.isIn(place, one.place()))
                .findFirst();
    }

    /** The draft with one of them written. */
    public static Draft taken(Draft draft, Assumption one) {
        return draft.typed(one.place(), one.value());
    }

    /** The draft with all written that is the contractor's to decide. */
    public Draft decided(Draft draft) {
        Draft taken = draft;
        for (Assumption one : all) {
            taken = one.kind() == Assumption.Kind.DECIDED ? taken(taken, one) : taken;
        }
        return taken;
    }

    public long count(Assumption.Kind kind) {
        return all.stream().filter(one -> one.kind() == kind).count();
    }
}
