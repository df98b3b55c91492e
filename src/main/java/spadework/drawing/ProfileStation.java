package spadework.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.measure.Length;

/**
 * A place along the chain where a reach ends or begins.
 *
 * @param feet from the chain's start
 * @param in invert of the pipe that arrives; empty at the start and where it was not measured
 * @param out invert of the pipe that goes on; empty at the end and where it was not measured
 * @param grade the ground
 * @param crown inside top of the highest pipe here
 */
record ProfileStation(
        double feet, Optional<Length> in, Optional<Length> out, Optional<Length> grade, Optional<Length> crown) {

    /** Every station of a chain, its start first. */
    static List<ProfileStation> of(ProfileChain chain) {
        List<ProfileReach> reaches = chain.reaches();
        List<ProfileStation> stations = new ArrayList<>();
        double feet = 0;
        for (int i = 0; i <= reaches.size(); i++) {
            Optional<ProfileReach> before = i == 0 ? Optional.empty() : Optional.of(reaches.get(i - 1));
            Optional<ProfileReach> after = i == reaches.size() ? Optional.empty() : Optional.of(reaches.get(i));
            Optional<Length> in = before.flatMap(ProfileReach::endInvert);
            Optional<Length> out = after.flatMap(ProfileReach::startInvert);
            Optional<Length> crownIn = before.flatMap(r -> r.endInvert().map(r.insideDiameter()::plus));
            Optional<Length> crownOut = after.flatMap(r -> r.startInvert().map(r.insideDiameter()::plus));
            stations.add(new ProfileStation(
                    feet,
                    in,
                    out,
                    before.flatMap(ProfileReach::endGrade).or(() -> after.flatMap(ProfileReach::startGrade)),
                    higher(crownIn, crownOut)));
            feet += after.map(reach -> reach.length().feet()).orElse(0.0);
        }
        return stations;
    }

    /** Ground over the pipe's inside top; empty where either is not known. */
    Optional<Length> cover() {
        return grade.flatMap(ground -> crown.map(ground::minus));
    }

    /** {@code 92.12 ft}, or {@code 92.12 / 92.10 ft} where two pipes meet at two levels. */
    String invertText() {
        if (in.isPresent() && out.isPresent() && !in.get().levelText().equals(out.get().levelText())) {
            return in.get().levelText().replace(PlanWords.FEET, "") + " / " + out.get().levelText();
        }
        return in.or(() -> out).map(Length::levelText).orElse(ProfileWords.NOT_MEASURED);
    }

    private static Optional<Length> higher(Optional<Length> a, Optional<Length> b) {
        return a.isPresent() && b.isPresent() ? (a.get().compareTo(b.get()) >= 0 ? a : b) : a.or(() -> b);
    }
}
