// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallEnd;
import spadework.measure.Length;

/** Which way a drain passes its walls, and what its pipe gains at their corners, worked out by hand. */
class LegTest {

    private static Wall wall(String label, double start, double end) {
        Wall w = Jobs.wall();
        return new Wall(
                label,
                w.where(),
                w.place(),
                new WallDepth(Length.ofFeet(start), Length.ofFeet(end)),
                w.footing(),
                w.surface(),
                w.openings(),
                0,
                w.digging());
    }

    private static FootingDrain along(String... walls) {
        return new FootingDrain(
                "D1",
                List.of(walls),
                Optional.empty(),
                TeeAt.END,
                "O1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Corner corner(String first, boolean firstAtEnd, String second, boolean secondAtEnd) {
        return new Corner(new WallEnd(first, firstAtEnd), new WallEnd(second, secondAtEnd), CornerKind.OUTSIDE);
    }

    private static Job job(Corner... corners) {
        return Jobs.withCorners(Jobs.job(wall("A", 4, 5), wall("B", 5, 6), wall("C", 6, 7)), List.of(corners));
    }

    /** A wall that is left through its start is passed backward, and so is one that is entered at its end. */
    @ParameterizedTest(name = "A {0}, B {1}: backward {2}, {3}")
    @CsvSource({
        "true, false, false, false",
        "false, false, true, false",
        "true, true, false, true",
        "false, true, true, true",
    })
    void cornersTurnTheWalls(boolean leftAtEnd, boolean enteredAtEnd, boolean first, boolean second) {
        for (Corner corner :
                List.of(corner("A", leftAtEnd, "B", enteredAtEnd), corner("B", enteredAtEnd, "A", leftAtEnd))) {
            // A corner with a third wall stands first in the list and is none of theirs.
            Job job = job(corner("A", !leftAtEnd, "C", true), corner("C", false, "B", !enteredAtEnd), corner);
            List<Leg> legs = Leg.of(job, along("A", "B"));
            assertThat(legs).extracting(Leg::backward).containsExactly(first, second);
            assertThat(legs).extracting(Leg::corner).containsExactly(Optional.of(corner), Optional.empty());
            assertThat(legs.get(0).depthIn().feet()).isEqualTo(first ? 5 : 4);
            assertThat(legs.get(0).depthOut().feet()).isEqualTo(first ? 4 : 5);
            assertThat(legs.get(1).depthIn().feet()).isEqualTo(second ? 6 : 5);
            assertThat(legs.get(1).depthOut().feet()).isEqualTo(second ? 5 : 6);
        }
    }

    /** Where nothing says how walls meet, each is passed from its start to its end. */
    @Test
    void wallsWithoutCorners() {
        List<Leg> legs = Leg.of(job(), along("B", "A"));
        assertThat(legs).extracting(leg -> leg.wall().label()).containsExactly("B", "A");
        assertThat(legs).extracting(Leg::backward).containsExactly(false, false);
        assertThat(legs).extracting(Leg::corner).containsOnly(Optional.empty());
    }

    /** In the middle the corner before counts: it is entered there. */
    @Test
    void threeWalls() {
        Corner one = corner("A", true, "B", true);
        Corner other = corner("B", false, "C", false);
        List<Leg> legs = Leg.of(job(one, other), along("A", "B", "C"));
        assertThat(legs).extracting(Leg::backward).containsExactly(false, true, false);
        assertThat(legs)
                .extracting(Leg::corner)
                .containsExactly(Optional.of(one), Optional.of(other), Optional.empty());
    }

    /** The pipe lies 6 in and half of 24 in before each wall: 3 ft more round an outside corner, 3 ft less within. */
    @ParameterizedTest(name = "{0}: {1} ft")
    @CsvSource({"OUTSIDE, 3", "INSIDE, -3"})
    void cornersMakeThePipeLongerOrShorter(CornerKind kind, double feet) {
        Corner corner = new Corner(new WallEnd("A", true), new WallEnd("B", false), kind);
        Job job = job(corner, corner("B", true, "C", false));
        assertThat(DrainLength.gain(job, corner)).isCloseTo(feet, within(1e-9));
        double walls =
                job.getWall("A").length().feet() + job.getWall("B").length().feet();
        assertThat(DrainLength.of(job, along("A", "B")).number()).isCloseTo(walls + feet, within(1e-9));
        assertThat(DrainLength.corners(job, along("A", "B"))).containsExactly(corner);
        assertThat(DrainLength.of(job, along("A", "B")).formula())
                .isEqualTo(feet > 0 ? "L1 + L2 + c3" : "L1 + L2 − c3");
    }
}
