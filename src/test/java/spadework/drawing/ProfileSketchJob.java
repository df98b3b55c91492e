// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.util.List;
import java.util.Optional;
import spadework.drawing.profile.ProfileChain;
import spadework.drawing.profile.ProfileReach;
import spadework.drawing.profile.ProfileReach.Kind;
import spadework.measure.Length;

/** Chains of pipes to look at from the side. All of it is invented. */
public final class ProfileSketchJob {
    private ProfileSketchJob() {}

    /** A drain of 40 ft and a main of 60 ft with every level measured. */
    public static ProfileChain measured() {
        return chain(
                reach("D1", Kind.DRAIN, 40, level(92.5), level(92.12), level(96.5), level(96.1)),
                reach("M1", Kind.MAIN, 60, level(92.1), level(91.2), level(96.1), level(92.4)));
    }

    public static ProfileChain chain(ProfileReach... reaches) {
        return new ProfileChain(List.of(reaches), "O1", "swale", level(91.2), "door sill, 100.00 ft");
    }

    public static ProfileReach reach(
            String label,
            Kind kind,
            double length,
            Optional<Length> start,
            Optional<Length> end,
            Optional<Length> startGrade,
            Optional<Length> endGrade) {
        return new ProfileReach(
                label,
                kind,
                Length.ofFeet(length),
                start,
                end,
                startGrade,
                endGrade,
                Length.ofInches(4),
                Length.ofInches(4.2));
    }

    public static Optional<Length> level(double feet) {
        return Optional.of(Length.ofFeet(feet));
    }

    public static Optional<Length> none() {
        return Optional.empty();
    }
}
