// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import spadework.measure.Length;

/** Stations along a line: turned round, cut, and given the levels that lie straight between known ones. */
public final class Profile {
    private static final double SAME_PLACE = 1e-6;

    private Profile() {}

    /** The same places seen from the other end. */
    static List<Station> reversed(List<Station> stations, double length) {
        List<Station> back = new ArrayList<>();
        for (int i = stations.size() - 1; i >= 0; i--) {
            Station s = stations.get(i);
            back.add(new Station(Length.ofFeet(length - s.at().feet()), s.invert(), s.ground(), s.joints()));
        }
        return back;
    }

    /** The places up to a distance, with one at that distance. */
    static List<Station> upTo(List<Station> stations, double feet) {
        List<Station> cut = new ArrayList<>(
                stations.stream().filter(s -> s.at().feet() < feet - SAME_PLACE).toList());
        Optional<Length> ground = between(stations, feet, Station::ground);
        cut.add(new Station(Length.ofFeet(feet), Optional.empty(), ground, List.of()));
        return cut;
    }

    /** The same places with a joint at a distance, which becomes a place if it is none. */
    static List<Station> withJoint(List<Station> stations, double feet, Joint joint) {
        List<Station> with = new ArrayList<>();
        boolean placed = false;
        for (Station s : stations) {
            boolean here = Math.abs(s.at().feet() - feet) < SAME_PLACE;
            if (!placed && !here && s.at().feet() > feet) {
                with.add(new Station(
                        Length.ofFeet(feet),
                        between(stations, feet, Station::invert),
                        between(stations, feet, Station::ground),
                        List.of(joint)));
                placed = true;
            }
            List<Joint> joints = new ArrayList<>(s.joints());
            if (here && !placed) {
                joints.add(joint);
                placed = true;
            }
            with.add(new Station(s.at(), s.invert(), s.ground(), joints));
        }
        return with;
    }

    /** The inverts at the two ends of a line, as far as they are known. */
    record Inverts(Optional<Length> start, Optional<Length> end) {

        private Optional<Length> at(double feet, double length) {
            return start.flatMap(high ->
                    end.map(low -> Length.ofFeet(high.feet() - (high.feet() - low.feet()) * feet / length)));
        }
    }

    /** The inverts from the one end to the other, straight between where both are known. */
    static List<Station> withInverts(List<Station> stations, Inverts known) {
        double length = stations.get(stations.size() - 1).at().feet();
        List<Station> with = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            Station s = stations.get(i);
            Optional<Length> invert =
                    i == 0 ? known.start() : i == stations.size() - 1 ? known.end() : known.at(s.at().feet(), length);
            with.add(new Station(s.at(), invert, s.ground(), s.joints()));
        }
        return with;
    }

    private static Optional<Length> between(
            List<Station> stations, double feet, Function<Station, Optional<Length>> level) {
        for (int i = 1; i < stations.size(); i++) {
            Station a = stations.get(i - 1);
            Station b = stations.get(i);
            boolean known = level.apply(a).isPresent() && level.apply(b).isPresent();
            boolean holds = a.at().feet() - SAME_PLACE <= feet && feet <= b.at().feet() + SAME_PLACE;
            if (holds && known && b.at().compareTo(a.at()) > 0) {
                double share = (feet - a.at().feet()) / (b.at().feet() - a.at().feet());
                double low = level.apply(a).get().feet();
                return Optional.of(Length.ofFeet(low + (level.apply(b).get().feet() - low) * share));
            }
        }
        return Optional.empty();
    }
}
