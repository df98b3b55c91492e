// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.PlanJob;
import spadework.ground.DigBodies;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.Outlet;
import spadework.job.PitPlace;
import spadework.job.Side;
import spadework.job.SiteLimit;
import spadework.job.TeeAt;
import spadework.job.Water;
import spadework.measure.Length;

/**
 * A house 42 ft wide and 28 ft deep; wall A lies along its north side, wall B along its east side, and a line before
 * one of them. All of it is invented.
 */
class NearLineTest {
    private static final SiteLimit GAS = line("A", 4);

    /** By hand up to 24 in beside a mark: a pipe that ends 30 ft out stays clear of a line more than 32 ft out. */
    @ParameterizedTest(name = "roof line from the {0} to the {1}, line {2} ft before wall A: near is {3}")
    @CsvSource(textBlock = """
            NORTH, north, 32,    true
            NORTH, north, 32.01, false
            NORTH, east,  4,     true
            EAST,  east,  4,     false
            WEST,  east,  4,     true
            EAST,  south, 4,     false
            """)
    void roofLine(Side down, String out, double distance, boolean near) {
        Job job = walls().downspout("DS1", "R1", down, 20)
                .roofLine("R1", "O1", 60)
                .outlet("O1", "swale along the " + out + " lot line", 30)
                .job();
        assertThat(labels(job, line("A", distance)).contains("R1")).isEqualTo(near);
    }

    @Test
    void whatLiesNobodyKnowsWhereIsNear() {
        Job unplaced = walls().downspout("DS1", "R1", Side.EAST, 20)
                .downspout("DS2", "R1")
                .roofLine("R1", "O1", 60)
                .outlet("O1", "swale along the east lot line", 30)
                .job();
        assertThat(labels(unplaced, GAS)).contains("R1");
        Job nowhere = walls().downspout("DS1", "R1", Side.EAST, 20)
                .roofLine("R1", "O1", 60)
                .outlet("O1", "low ground", 30)
                .job();
        assertThat(labels(nowhere, GAS)).contains("R1");
    }

    @ParameterizedTest(name = "drain along {0}, line before wall A: near is {1}")
    @CsvSource({"A, true", "B, false"})
    void main(String along, boolean near) {
        Job job = walls().drain("D1", TeeAt.END, "M1", along)
                .main("M1", "O1", 60)
                .outlet("O1", "swale along the " + (near ? "north" : "east") + " lot line", 30)
                .job();
        assertThat(labels(job, GAS).contains("M1")).isEqualTo(near);
    }

    /** The hole lies 6 in and 10 ft off and is 3 ft 6 in wide, so it reaches 14 ft out. */
    @ParameterizedTest(name = "sump before wall {0}, line {1} ft before wall A: near is {2}")
    @CsvSource({"A, 16, true", "A, 16.01, false", "B, 4, false"})
    void sumpPit(String wall, double distance, boolean near) {
        Job job = walls().sump("S1", PitPlace.OUTSIDE, Optional.of(Length.ofFeet(10)), Optional.empty(), 38)
                .job();
        Water water = job.water();
        Job named = job.withWater(new Water(
                water.drains(),
                water.mains(),
                water.roofLines(),
                water.downspouts(),
                water.outlets().stream().map(sump -> outside(sump, wall)).toList(),
                water.candidates()));
        assertThat(kinds(named, line("A", distance)).contains("SUMP_PIT S1")).isEqualTo(near);
    }

    /** A lead is near where its drain gives its water away on the line's side, or its sump stands there. */
    @ParameterizedTest(name = "drain along {0}, sump before wall {1}: near is {2}")
    @CsvSource({"A, B, true", "B, A, true", "B, B, false"})
    void lead(String along, String wall, boolean near) {
        Job job = walls().drain("D1", TeeAt.MIDDLE, "S1", along)
                .sump("S1", PitPlace.OUTSIDE, Optional.of(Length.ofFeet(10)), Optional.empty(), 38)
                .job();
        Water water = job.water();
        Job named = job.withWater(new Water(
                water.drains(),
                water.mains(),
                water.roofLines(),
                water.downspouts(),
                water.outlets().stream().map(sump -> outside(sump, wall)).toList(),
                water.candidates()));
        assertThat(kinds(named, GAS).contains("LEAD D1")).isEqualTo(near);
    }

    private static Outlet outside(Outlet sump, String wall) {
        return new Outlet(
                sump.label(),
                sump.kind(),
                "sump outside wall " + wall,
                sump.level(),
                sump.fromHouse(),
                sump.fromLotLine(),
                sump.permission(),
                sump.discharge(),
                sump.waterLevel(),
                sump.pit(),
                sump.dischargeTrench());
    }

    /** Walls whose ends lie 1 ft from each other are two trenches; nearer they are one. */
    @ParameterizedTest(name = "wall B begins {0} ft from the corner: near is {1}")
    @CsvSource({"0.99, true", "1, false"})
    void onlyAWallThatMeetsItsWallIsNear(double from, boolean near) {
        Job job = PlanJob.house(42, 28)
                .wall("A", Side.NORTH, 0, 42)
                .wall("B", Side.EAST, from, 20)
                .job();
        assertThat(labels(job, GAS)).isEqualTo(near ? List.of("B") : List.of());
    }

    private static PlanJob walls() {
        return PlanJob.house(42, 28).wall("A", Side.NORTH, 0, 42).wall("B", Side.EAST, 0, 26);
    }

    private static SiteLimit line(String wall, double distance) {
        return new SiteLimit(LimitKind.UTILITY, wall, Length.ofFeet(distance), Optional.empty(), "gas");
    }

    private static List<String> labels(Job job, SiteLimit line) {
        return NearLine.of(job, line, DigBodies.of(job)).stream()
                .map(body -> body.label())
                .toList();
    }

    private static List<String> kinds(Job job, SiteLimit line) {
        return NearLine.of(job, line, DigBodies.of(job)).stream()
                .map(body -> body.kind() + " " + body.label())
                .toList();
    }
}
