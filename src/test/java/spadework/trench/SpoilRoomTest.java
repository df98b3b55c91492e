// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Length;

/**
 * Whether a heap has room beside a wall's trench: 2 ft behind the edge (29 CFR 1926.651(j)(2)) and 3 ft wide (common
 * practice, no source).
 */
class SpoilRoomTest {
    /** An upright trench with its edge 2 ft 6 in from the wall: 6 in of footing and 24 in of bottom. */
    private static final Wall WALL = PlanHouse.wall("W0", 30, 4, 4, 24, Protection.UPRIGHT);

    private static Optional<SiteLimit> inTheWay(String wall, LimitKind kind, double distance) {
        SiteLimit limit = new SiteLimit(kind, wall, Length.ofFeet(distance), Optional.empty(), "");
        return SpoilRoom.inTheWay(Jobs.with(Jobs.site(), limit), WALL);
    }

    @ParameterizedTest(name = "{0} {1} ft from the wall: no room is {2}")
    @CsvSource(textBlock = """
            PROPERTY_LINE,    7.4, true
            PROPERTY_LINE,    7.5, false
            PROPERTY_LINE,    1,   true
            NEIGHBOR_FOOTING, 7.4, true
            UTILITY,          4,   true
            UTILITY,          7.5, false
            UTILITY,          2,   false
            WALK,             4,   false
            """)
    void heapStaysOffLotLineNeighborAndMarkedUtility(LimitKind kind, double distance, boolean expected) {
        assertThat(inTheWay("W0", kind, distance).isPresent()).isEqualTo(expected);
    }

    @Test
    void whatStandsBesideAnotherWallIsNotInTheWay() {
        assertThat(inTheWay("another", LimitKind.PROPERTY_LINE, 4)).isEmpty();
    }
}
