// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
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
                List.of(),
                Length.ofInches(4),
                Length.ofInches(4.2));
    }

    public static Optional<Length> level(double feet) {
        return Optional.of(Length.ofFeet(feet));
    }

    public static Optional<Length> none() {
        return Optional.empty();
    }

    /** One to four pipes by seed, with a level missing here and there. */
    public static ProfileChain random(long seed) {
        Random random = new Random(seed);
        List<ProfileReach> reaches = new ArrayList<>();
        double level = 90 + random.nextInt(100) / 10.0;
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            double length = 4 + random.nextInt(160);
            double end = level - length * (random.nextInt(40) - 4) / 1000.0;
            double ground = level + 1 + random.nextInt(60) / 10.0;
            reaches.add(reach(
                    random.nextInt(5) == 0 ? "Main along the garage " + i : "P" + i,
                    Kind.values()[random.nextInt(3)],
                    length,
                    maybe(random, level),
                    maybe(random, end),
                    maybe(random, ground),
                    maybe(random, end + 1 + random.nextInt(40) / 10.0)));
            level = end - random.nextInt(5) / 100.0;
        }
        return new ProfileChain(
                reaches,
                "O1",
                "swale along the back lot line",
                maybe(random, level - 0.1),
                random.nextBoolean() ? "door sill, 100.00 ft" : "");
    }

    private static Optional<Length> maybe(Random random, double feet) {
        return random.nextInt(5) == 0 ? none() : level(feet);
    }
}
