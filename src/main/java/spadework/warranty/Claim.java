// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A claim on a warranty. A later step adds to what is known, and where it says something again it counts; the earlier
 * step stays readable.
 *
 * @param number of the claim
 * @param steps at least one, in the order in which they were written down
 */
public record Claim(String number, List<ClaimStep> steps) {

    /** Where a claim stands. */
    public enum State {
        OPEN,
        INSPECTED,
        COVERED,
        NOT_COVERED,
        CLOSED;

        /** As a person says it. */
        public String words() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    public Claim {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a claim without steps");
        }
    }

    /** The claim with one step more. */
    public Claim and(ClaimStep step) {
        List<ClaimStep> more = new ArrayList<>(steps);
        more.add(step);
        return new Claim(number, more);
    }

    public LocalDate opened() {
        return steps.get(0).on();
    }

    /** What was said last of something, if anything was. */
    public <T> Optional<T> last(Function<ClaimStep, Optional<T>> of) {
        return steps.stream().map(of).flatMap(Optional::stream).reduce((earlier, later) -> later);
    }

    /** The day on which it was first decided whether it is covered. */
    public Optional<LocalDate> decided() {
        return steps.stream()
                .filter(step -> step.covered().isPresent())
                .map(ClaimStep::on)
                .findFirst();
    }

    public State state() {
        if (last(ClaimStep::closed).isPresent()) {
            return State.CLOSED;
        }
        Optional<Boolean> covered = last(ClaimStep::covered);
        if (covered.isPresent()) {
            return covered.get() ? State.COVERED : State.NOT_COVERED;
        }
        return last(ClaimStep::inspected).isPresent() ? State.INSPECTED : State.OPEN;
    }
}
