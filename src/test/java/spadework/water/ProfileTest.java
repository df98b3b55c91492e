// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spadework.measure.Length;

/** Stations turned round, cut and given the levels that lie straight between known ones. */
class ProfileTest {
    private static Station at(double feet, Double invert, Double ground, Joint... joints) {
        return new Station(Length.ofFeet(feet), level(invert), level(ground), List.of(joints));
    }

    private static Optional<Length> level(Double feet) {
        return Optional.ofNullable(feet).map(Length::ofFeet);
    }

    private static double feet(Optional<Length> level) {
        return level.orElseThrow().feet();
    }

    @Test
    void seenFromTheOtherEnd() {
        List<Station> back = Profile.reversed(
                List.of(at(0, 5.0, 9.0, Joint.CLEANOUT), at(30, 4.0, 8.0, Joint.BEND), at(40, 3.0, 7.0)), 40);
        assertThat(back)
                .containsExactly(at(0, 3.0, 7.0), at(10, 4.0, 8.0, Joint.BEND), at(40, 5.0, 9.0, Joint.CLEANOUT));
    }

    /** Ground 9 at 0 and 7 at 40 lies at 8 half-way; what is beyond the cut falls away, as does a place at the cut. */
    @Test
    void upToADistance() {
        List<Station> line = List.of(at(0, 5.0, 9.0), at(20, null, 8.0, Joint.BEND), at(40, 3.0, 7.0));
        List<Station> cut = Profile.upTo(line, 30);
        assertThat(cut).hasSize(3);
        assertThat(cut.get(2).at().feet()).isEqualTo(30);
        assertThat(feet(cut.get(2).ground())).isCloseTo(7.5, within(1e-9));
        assertThat(cut.get(2).invert()).isEmpty();
        List<Station> here = Profile.upTo(line, 20);
        assertThat(here).hasSize(2);
        assertThat(here.get(1).joints()).isEmpty();
        assertThat(feet(here.get(1).ground())).isCloseTo(8, within(1e-9));
        assertThat(Profile.upTo(List.of(at(0, 5.0, null), at(40, 3.0, 7.0)), 20)
                        .get(1)
                        .ground())
                .isEmpty();
    }

    @Test
    void jointAtAPlaceOrBetweenTwo() {
        List<Station> line = List.of(at(0, 5.0, 9.0), at(20, 4.0, 8.0, Joint.BEND), at(40, 3.0, 7.0));
        List<Station> between = Profile.withJoint(line, 10, Joint.CLEANOUT);
        assertThat(between).hasSize(4);
        assertThat(between.get(1)).isEqualTo(at(10, 4.5, 8.5, Joint.CLEANOUT));
        List<Station> here = Profile.withJoint(line, 20, Joint.CLEANOUT);
        assertThat(here).hasSize(3);
        assertThat(here.get(1).joints()).containsExactly(Joint.BEND, Joint.CLEANOUT);
        assertThat(here.get(0).joints()).isEmpty();
        List<Station> start = Profile.withJoint(line, 0, Joint.CLEANOUT);
        assertThat(start).hasSize(3);
        assertThat(start.get(0).joints()).containsExactly(Joint.CLEANOUT);
        List<Station> end = Profile.withJoint(line, 40, Joint.TEE);
        assertThat(end.get(2).joints()).containsExactly(Joint.TEE);
        assertThat(Profile.withJoint(line, 50, Joint.TEE)).isEqualTo(line);
    }

    /** A place that two stations share takes the joint once. */
    @Test
    void jointIsSetOnce() {
        List<Station> line = List.of(at(0, 5.0, 9.0), at(20, 4.0, 8.0), at(20, 3.5, 8.0), at(40, 3.0, 7.0));
        assertThat(Profile.withJoint(line, 20, Joint.BEND).stream()
                        .flatMap(s -> s.joints().stream())
                        .toList())
                .containsExactly(Joint.BEND);
    }

    /** 5 to 3 over 40 ft: 4.5 at 10 ft. Where one end is not known, only the other is. */
    @Test
    void invertsLieStraight() {
        List<Station> line = List.of(at(0, null, 9.0), at(10, null, 9.0), at(40, null, 7.0));
        List<Station> both = Profile.withInverts(line, new Profile.Inverts(level(5.0), level(3.0)));
        assertThat(both.stream().map(s -> feet(s.invert())).toList()).containsExactly(5.0, 4.5, 3.0);
        List<Station> one = Profile.withInverts(line, new Profile.Inverts(level(5.0), Optional.empty()));
        assertThat(one.get(0).invert()).isPresent();
        assertThat(one.get(1).invert()).isEmpty();
        assertThat(one.get(2).invert()).isEmpty();
        List<Station> other = Profile.withInverts(line, new Profile.Inverts(Optional.empty(), level(3.0)));
        assertThat(other.get(0).invert()).isEmpty();
        assertThat(other.get(1).invert()).isEmpty();
        assertThat(feet(other.get(2).invert())).isEqualTo(3.0);
    }

    /** Only the stretch that holds the place counts, and only where both of its ends are known. */
    @Test
    void levelBetweenIsTakenFromItsOwnStretch() {
        List<Station> line = List.of(at(0, 5.0, 9.0), at(10, 4.0, 6.0), at(10, 4.0, 20.0), at(30, 2.0, 10.0));
        assertThat(feet(Profile.upTo(line, 5).get(1).ground())).isCloseTo(7.5, within(1e-9));
        List<Station> cut = Profile.upTo(line, 20);
        assertThat(feet(cut.get(cut.size() - 1).ground())).isCloseTo(15, within(1e-9));
        assertThat(feet(Profile.withJoint(line, 20, Joint.BEND).get(3).invert()))
                .isCloseTo(3, within(1e-9));
    }

    /** The end of the line is a place on it, and a place a hair beside a station is that station. */
    @Test
    void placesAtTheEndAndAHairBeside() {
        List<Station> line = List.of(at(0, 5.0, 9.0), at(20, 4.0, 8.0), at(40, 3.0, 7.0));
        assertThat(feet(Profile.upTo(line, 40).get(2).ground())).isCloseTo(7, within(1e-9));
        for (double hair : List.of(-5e-7, 5e-7)) {
            List<Station> with = Profile.withJoint(line, 20 + hair, Joint.BEND);
            assertThat(with).hasSize(3);
            assertThat(with.get(1).joints()).containsExactly(Joint.BEND);
            assertThat(Profile.upTo(line, 20 + hair)).hasSize(2);
        }
        assertThat(Profile.withJoint(line, 20.001, Joint.BEND)).hasSize(4);
        assertThat(Profile.upTo(line, 20.001)).hasSize(3);
    }

    /** Two stations at one place hold no stretch; a level is not drawn on beyond the stretch that knows it. */
    @Test
    void unknownStretchGivesNoLevel() {
        List<Station> line = List.of(at(0, 5.0, null), at(10, 4.0, 6.0), at(10, 4.0, 20.0), at(30, 2.0, 10.0));
        assertThat(Profile.upTo(line, 5).get(1).ground()).isEmpty();
        assertThat(feet(Profile.upTo(line, 10).get(1).ground())).isCloseTo(20, within(1e-9));
        List<Station> unknownEnd = List.of(at(0, 5.0, 9.0), at(10, 4.0, 6.0), at(30, 2.0, null));
        assertThat(Profile.upTo(unknownEnd, 20).get(2).ground()).isEmpty();
        assertThat(feet(Profile.upTo(unknownEnd, 10).get(1).ground())).isCloseTo(6, within(1e-9));
    }
}
