// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.PlanJob;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.place.OutlineSpot;

/** Which way roof water takes along the house. */
class PipeLayoutTest {
    /** Two downspouts on a north wall of 50 ft, near its corners: 3 ft and 47 ft from the west. */
    @ParameterizedTest(name = "a ditch to the {0}: the pipe leaves {1} ft from the west")
    @CsvSource({"east, 47", "west, 3"})
    void roofWaterLeavesAtTheDownspoutNearestToItsOutlet(String where, double feet) {
        Job job = PlanJob.house(50, 30)
                .wall("A", Side.NORTH, 0, 50)
                .roofLine("R1", "O1")
                .downspout("DS1", "R1")
                .downspout("DS2", "R1")
                .outlet("O1", OutletKind.DAYLIGHT, "ditch along the " + where + " lot line")
                .job();

        PlanRun line = PipeLayout.of(job).runs().get(0);

        assertThat(line.starts()).hasSize(2);
        assertThat(line.leaves()).isEqualTo(new OutlineSpot(Side.NORTH, feet));
    }
}
