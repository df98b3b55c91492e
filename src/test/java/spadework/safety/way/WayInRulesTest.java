// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Side;
import spadework.job.Wall;
import spadework.job.WallPlace;
import spadework.job.WayIn;
import spadework.job.WayInKind;
import spadework.measure.Length;

/** The house is 60 ft wide and 30 ft deep. All of it is invented. */
class WayInRulesTest {

    @ParameterizedTest(name = "{0} ft of ground left on the last side: {1}")
    @CsvSource(textBlock = """
            3,    way-in-unwritten, a landing is 3 ft deep and wide (IRC R311.3)
            2.99, way-in-shut,      no landing has room
            0,    way-in-shut,      no ground is left
            """)
    void everySideIsDug(double left, String id, String why) {
        assertThat(ids(job(allRound(left), house(Optional.empty(), Optional.empty()))))
                .as(why)
                .containsExactly(id);
    }

    /** 60 ft of the north side, in two walls with ground between them. */
    @ParameterizedTest(name = "{0} ft between two walls: {1}")
    @CsvSource({"3, way-in-unwritten", "2.99, way-in-shut"})
    void groundBetweenTwoWallsCounts(double between, String id) {
        List<Wall> walls = List.of(
                wall("A", Side.NORTH, 0, 30),
                wall("E", Side.NORTH, 30 + between, 30 - between),
                wall("B", Side.EAST, 0, 30),
                wall("C", Side.SOUTH, 0, 60),
                wall("D", Side.WEST, 0, 30));
        assertThat(ids(job(walls, house(Optional.empty(), Optional.empty())))).containsExactly(id);
    }

    /** Wall A lies along 10 ft to 30 ft of the front; a landing reaches 18 in to each side of the door's middle. */
    @ParameterizedTest(name = "front door at {0} ft: {1}")
    @CsvSource({"8.5,", "8.51, way-in-front-door", "20, way-in-front-door", "31.49, way-in-front-door", "31.5,"})
    void frontDoorOverTheTrench(double door, String id) {
        Job job = job(
                List.of(wall("A", Side.SOUTH, 10, 20)),
                new House(
                        Length.ofFeet(60),
                        Length.ofFeet(30),
                        Optional.of(Side.SOUTH),
                        Optional.of(Length.ofFeet(door)),
                        Optional.empty()));
        assertThat(ids(job)).isEqualTo(id == null ? List.of() : List.of(id));
    }

    /** The law asks for rails on a walkway from 6 ft on (T-21); 8 in of footing lie under the measured depth. */
    @ParameterizedTest(name = "{0} in to the footing: {1}")
    @CsvSource({"64, way-in-bridge", "63.9, way-in-bridge-low"})
    void bridgeOverTheTrench(double inches, String id) {
        Wall deep = Jobs.deep(inches / 12);
        List<Finding> found = WayInRules.check(
                job(List.of(deep), house(way(WayInKind.BRIDGE, "back door at wall A"), Optional.empty())));
        assertThat(found).extracting(Finding::id).containsExactly(id);
        assertThat(found.get(0).values()).containsEntry("door", "back door at wall A");
        assertThat(found.get(0).citation()).isEqualTo("29 CFR 1926.651(l)");
    }

    @Test
    void theBridgeTellsTheDepthAtItsOwnWall() {
        List<Wall> walls = List.of(wall("A", Side.NORTH, 0, 60), Jobs.deep(8).withLabel("B"));
        List<Finding> at =
                WayInRules.check(job(walls, house(way(WayInKind.BRIDGE, "door at wall A"), Optional.empty())));
        assertThat(at.get(0).values()).containsEntry("depth", "5 ft 8 in");
        List<Finding> somewhere =
                WayInRules.check(job(walls, house(way(WayInKind.BRIDGE, "kitchen door"), Optional.empty())));
        assertThat(somewhere.get(0).values()).as("the deepest").containsEntry("depth", "8 ft 8 in");
    }

    @Test
    void aFreeSideIsFreeOnlyWhereNothingIsDug() {
        Optional<WayIn> porch = way(WayInKind.SIDE_NOT_DUG, "porch door");
        assertThat(ids(job(allRound(3), house(porch, Optional.empty())))).containsExactly("way-in-free");
        assertThat(ids(job(allRound(0), house(porch, Optional.empty())))).containsExactly("way-in-not-free");
        Optional<WayIn> dug = way(WayInKind.SIDE_NOT_DUG, "door at wall C");
        assertThat(ids(job(allRound(3), house(dug, Optional.empty())))).containsExactly("way-in-not-free");
    }

    @Test
    void aWallThatIsDugLastKeepsItsDoor() {
        Optional<WayIn> last = way(WayInKind.WALL_LAST, "door at wall C");
        assertThat(ids(job(allRound(0), house(last, Optional.empty())))).containsExactly("way-in-last");
    }

    @Test
    void noWallShutsNoDoor() {
        assertThat(WayInRules.check(job(List.of(), house(Optional.empty(), Optional.empty()))))
                .isEmpty();
    }

    private static List<Wall> allRound(double left) {
        return List.of(
                wall("A", Side.NORTH, 0, 60),
                wall("B", Side.EAST, 0, 30),
                wall("C", Side.SOUTH, 0, 60),
                wall("D", Side.WEST, 0, 30 - left));
    }

    private static Wall wall(String label, Side side, double from, double length) {
        return Jobs.wall().withLabel(label).withPlace(new WallPlace(side, Length.ofFeet(from), Length.ofFeet(length)));
    }

    private static Optional<WayIn> way(WayInKind by, String door) {
        return Optional.of(new WayIn(by, door));
    }

    private static House house(Optional<WayIn> wayIn, Optional<Side> front) {
        return new House(Length.ofFeet(60), Length.ofFeet(30), front, Optional.empty(), wayIn);
    }

    private static Job job(List<Wall> walls, House house) {
        return Jobs.job(Jobs.site().withHouse(house), Jobs.water(), walls.toArray(Wall[]::new));
    }

    private static List<String> ids(Job job) {
        return WayInRules.check(job).stream().map(Finding::id).toList();
    }
}
