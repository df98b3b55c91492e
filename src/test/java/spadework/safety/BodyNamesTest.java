// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Job;
import spadework.job.PitPlace;
import spadework.job.WaterJob;
import spadework.measure.Length;

/** What several trenches are called in one sentence. */
class BodyNamesTest {

    private static BodyNames name(String kind, String label) {
        return new BodyNames(kind, label);
    }

    @Test
    void oneKindIsNamedOnce() {
        assertThat(BodyNames.joined(List.of(name("wall", "A")))).isEqualTo("wall A");
        assertThat(BodyNames.joined(List.of(name("wall", "A"), name("wall", "B"))))
                .isEqualTo("walls A and B");
        assertThat(BodyNames.joined(
                        List.of(name("wall", "A"), name("main", "M1"), name("wall", "B"), name("wall", "D"))))
                .isEqualTo("walls A, B, and D and main M1");
        assertThat(BodyNames.joined(List.of(BodyNames.alone("by the porch")))).isEqualTo("trench by the porch");
    }

    @Test
    void eachLabelOnce() {
        assertThat(BodyNames.labels(List.of(name("wall", "A"), name("discharge pipe", "S1"), name("sump pit", "S1"))))
                .isEqualTo("A, S1");
    }

    /** Lengths that print alike are one. */
    @Test
    void rangeOfDepths() {
        List<Length> spread = Stream.of(5.0, 4.0, 6.5).map(Length::ofFeet).toList();
        assertThat(BodyNames.range(spread)).isEqualTo("4 ft to 6 ft 6 in");
        List<Length> same = Stream.of(5.0, 5.001).map(Length::ofFeet).toList();
        assertThat(BodyNames.range(same)).isEqualTo("5 ft");
    }

    @Test
    void bodiesOfAJobByTheirKind() {
        Job job = new WaterJob()
                .sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0)
                .pitAt(PitPlace.OUTSIDE)
                .build();
        for (DigBody body : DigBodies.of(job)) {
            BodyNames name = BodyNames.of(body);
            assertThat(name.label()).isEqualTo(body.label());
            assertThat(name.kind())
                    .doesNotContain("_")
                    .isLowerCase()
                    .isEqualTo(
                            body.kind() == BodyKind.DISCHARGE
                                    ? "discharge pipe"
                                    : body.kind()
                                            .name()
                                            .toLowerCase(java.util.Locale.ROOT)
                                            .replace('_', ' '));
        }
        assertThat(DigBodies.of(job)).extracting(DigBody::kind).contains(BodyKind.WALL, BodyKind.DISCHARGE);
    }
}
