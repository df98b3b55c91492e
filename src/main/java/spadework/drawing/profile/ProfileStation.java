// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.measure.Length;

/**
 * A place along the chain where a reach ends or begins. What was not measured is empty.
 *
 * @param feet from the chain's start
 * @param inverts of the pipe that arrives and of the pipe that goes on
 * @param grades the ground as it was measured for the one and for the other
 * @param cover the lesser of both
 */
public record ProfileStation(double feet, List<Length> inverts, List<Length> grades, Optional<Length> cover) {

    /** Every station of a chain, its start first. */
    static List<ProfileStation> of(ProfileChain chain) {
        List<ProfileReach> reaches = chain.reaches();
        List<ProfileStation> stations = new ArrayList<>();
        double feet = 0;
        for (int i = 0; i <= reaches.size(); i++) {
            Optional<ProfileReach> before = i == 0 ? Optional.empty() : Optional.of(reaches.get(i - 1));
            Optional<ProfileReach> after = i == reaches.size() ? Optional.empty() : Optional.of(reaches.get(i));
            stations.add(new ProfileStation(
                    feet,
                    known(
                            before.stream().map(ProfileReach::endInvert),
                            after.stream().map(ProfileReach::startInvert)),
                    known(
                            before.stream().map(ProfileReach::endGrade),
                            after.stream().map(ProfileReach::startGrade)),
                    known(
                                    before.stream().map(ProfileReach::endCover),
                                    after.stream().map(ProfileReach::startCover))
                            .stream()
                            .min(Length::compareTo)));
            feet += after.map(reach -> reach.length().feet()).orElse(0.0);
        }
        return stations;
    }

    private static List<Length> known(Stream<Optional<Length>> before, Stream<Optional<Length>> after) {
        return Stream.concat(before, after).flatMap(Optional::stream).toList();
    }
}
