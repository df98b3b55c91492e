// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.PlanJob;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;
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

    /** What an option or a change leads into a pipe comes after what the job names first: no outlet changes places. */
    @ParameterizedTest(name = "with another drain {0}, with another downspout {1}")
    @CsvSource({"false, false", "true, false", "false, true", "true, true"})
    void outletsKeepTheirOrderWhenPipesTakeMore(boolean drain, boolean downspout) {
        PlanJob plan = PlanJob.house(42, 26).wall("A", Side.EAST, 0, 26).drain("D1", TeeAt.END, "M1", "A");
        if (drain) {
            plan.wall("B", Side.SOUTH, 22, 20).drain("D2", TeeAt.START, "M1", "B");
        }
        plan.main("M1", "O1")
                .roofLine("R1", "O2")
                .downspout("DS1", "R1", Side.EAST, 1)
                .downspout("DS2", "R1", Side.EAST, 15);
        if (downspout) {
            plan.downspout("DS3", "R1", Side.SOUTH, 40);
        }
        Job job = plan.outlet("O1", OutletKind.DAYLIGHT, "ditch along the south lot line")
                .outlet("O2", OutletKind.DAYLIGHT, "ditch along the south lot line")
                .job();
        PipeLayout layout = PipeLayout.of(job);

        assertThat(layout.runs().stream()
                        .sorted(Comparator.comparingDouble(
                                run -> layout.comesIn(run, job.site().house())))
                        .map(PlanRun::outlet))
                .containsExactly("O1", "O2");
    }
}
