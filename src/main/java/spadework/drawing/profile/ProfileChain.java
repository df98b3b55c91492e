// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.List;
import java.util.Optional;
import spadework.measure.Length;

/**
 * The way of the water from a drain's high end, or a downspout, to where it leaves the pipes.
 *
 * @param reaches in the direction of flow; at least one
 * @param outlet its label as on the plan
 * @param place what is there, in words
 * @param outletLevel level of the ground or the water that takes it
 * @param benchmark what the levels are measured from; empty when nobody said
 */
public record ProfileChain(
        List<ProfileReach> reaches, String outlet, String place, Optional<Length> outletLevel, String benchmark) {

    /** @throws IllegalArgumentException if there is no reach */
    public ProfileChain {
        reaches = List.copyOf(reaches);
        if (reaches.isEmpty()) {
            throw new IllegalArgumentException("a profile needs a reach");
        }
    }

    /** True if at least one line is known at both its ends. */
    boolean canBeDrawn() {
        return reaches.stream()
                .anyMatch(reach -> reach.isLeveled()
                        || (reach.startGrade().isPresent() && reach.endGrade().isPresent()));
    }

    double feet() {
        return reaches.stream().mapToDouble(reach -> reach.length().feet()).sum();
    }
}
