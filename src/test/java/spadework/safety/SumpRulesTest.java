// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Texture;
import spadework.job.WaterJob;

/** Basin, pump and cycle of a sump. */
class SumpRulesTest {
    private static final Set<String> PUMP =
            Set.of("sump-head-unmeasured", "sump-pump-unknown", "sump-pump-small", "sump-pump-fits", "sump-pump-curve");

    /** IRC P3303.1.2, IPC 1113.1.2 (F-33): at least 18 in across and 24 in deep. */
    @ParameterizedTest(name = "{0} by {1} in: {2} {3}")
    @CsvSource(textBlock = """
            18,   24,   sump-basin-small,   false
            17.9, 24,   sump-basin-small,   true
            18,   23.9, sump-basin-small,   true
            ,     24,   sump-basin-unknown, true
            18,   ,     sump-basin-unknown, true
            18,   24,   sump-basin-unknown, false
            """)
    void basin(Double diameter, Double depth, String id, boolean expected) {
        WaterJob job = new WaterJob().sump(diameter, depth, 8.0, 40.0, 25.0, 12.0);
        assertThat(Checked.ids(job).contains(id)).isEqualTo(expected);
    }

    /**
     * 40 ft of wall in sand bring 12.4 gpm at the high end, so 18.6 gpm are asked for (factor 1.5, W-17). At 18.6 gpm a
     * lift of 8 ft and 78 ft of 1-1/2 in pipe with fittings ask for 9.68 ft (Hazen-Williams, C 150). A pump's head
     * falls as its flow rises, so the point decides only where it lies above or below in both.
     */
    @ParameterizedTest(name = "{2} gpm at {3} ft, lift {0}, {1} ft of pipe: {4}")
    @CsvSource(textBlock = """
            8, 40, 25,   11,   sump-pump-fits
            8, 40, 25,   9.7,  sump-pump-fits
            8, 40, 25,   9.6,  sump-pump-curve
            8, 40, 19.8, 12,   sump-pump-fits
            8, 40, 18.5, 12,   sump-pump-curve
            8, 40, 18.5, 9.6,  sump-pump-small
            8, 40, ,     12,   sump-pump-unknown
            8, 40, 25,   ,     sump-pump-unknown
            ,  40, 25,   12,   sump-head-unmeasured
            8, ,   25,   12,   sump-head-unmeasured
            """)
    void pump(Double lift, Double length, Double flow, Double head, String expected) {
        WaterJob job = new WaterJob().soil(Texture.SAND).sump(18.0, 24.0, lift, length, flow, head);
        assertThat(Checked.ids(job)).filteredOn(PUMP::contains).isEqualTo(List.of(expected));
    }

    /** UFC 3-240-04A: 10 min from start to start for small motors (H-38). */
    @ParameterizedTest(name = "{0} in basin: starts too often {1}")
    @CsvSource({"18, true", "72, false"})
    void cycle(double diameter, boolean expected) {
        WaterJob job = new WaterJob().soil(Texture.SAND).sump(diameter, 24.0, 8.0, 40.0, 25.0, 12.0);
        assertThat(Checked.ids(job).contains("sump-cycle")).isEqualTo(expected);
    }

    @Test
    void unknownInflowIsTold() {
        WaterJob job = new WaterJob().rain(null).downspout("DS1", 400, "D1").sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0);
        assertThat(Checked.ids(job)).contains("sump-inflow-unknown");
        assertThat(Checked.ids(new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0)))
                .doesNotContain("sump-inflow-unknown")
                .contains("sump");
    }

    @Test
    void pumpPointIsToldWhereNoPumpIsChosen() {
        WaterJob job = new WaterJob().soil(Texture.SAND).sump(18.0, 24.0, 8.0, 40.0, null, null);
        assertThat(Checked.only(job, "sump-pump-unknown").values()).containsKeys("low", "high", "flow", "head");
    }

    /** One inflow for flow and head: at its own 40 gpm this pipe would ask for 22 ft, at the 5.7 needed 8.4. */
    @Test
    void bigPumpIsNotTooSmallForATrickle() {
        WaterJob job = new WaterJob().sump(18.0, 24.0, 8.0, 120.0, 40.0, 12.0).observed(3.8);
        assertThat(Checked.only(job, "sump-pump-fits").values()).containsEntry("flow", "5.7 gpm");
    }

    /** In loam the tables give 0.8 gpm at most: what is seen counts where it is more, and never lowers the range. */
    @ParameterizedTest(name = "{0} gpm seen: {1}, needed {2}")
    @CsvSource(textBlock = """
            3.8, sump-inflow-over-tables, 5.7 gpm
            0.1, sump-inflow-watched,     1.1 gpm
            """)
    void wetterOfTableAndPitCounts(double seen, String id, String needed) {
        WaterJob job = new WaterJob().sump(18.0, 24.0, 8.0, 40.0, null, null).observed(seen);
        assertThat(Checked.only(job, id).values()).containsEntry("seen", String.format("%.1f gpm", seen));
        assertThat(Checked.only(job, "sump-pump-unknown").values()).containsEntry("flow", needed);
    }

    @Test
    void unwatchedPitIsTold() {
        WaterJob job = new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0);
        assertThat(Checked.ids(job)).contains("sump-inflow-unwatched");
        assertThat(Checked.ids(job.observed(2))).doesNotContain("sump-inflow-unwatched");
        assertThat(Checked.ids(new WaterJob())).doesNotContain("sump-inflow-unwatched");
    }
}
