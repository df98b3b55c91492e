// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.PitPlace;
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

    private static WaterJob sump(Double length) {
        return new WaterJob().sump(18.0, 24.0, 8.0, length, 25.0, 12.0);
    }

    /** The discharge pipe's trench is asked for where there is a pipe. */
    @Test
    void trenchOfTheDischargePipe() {
        assertThat(Checked.only(sump(40.0), "sump-discharge-trench").values()).containsEntry("length", "40 ft");
        assertThat(Checked.ids(sump(null))).doesNotContain("sump-discharge-trench");
        assertThat(Checked.ids(sump(0.0))).doesNotContain("sump-discharge-trench");
    }

    /** A drain is led into the pit; a pit outside the wall, or who knows where, gets a riser to grade. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"INSIDE, ", "OUTSIDE, in the yard", "UNKNOWN, on a side of the wall that the job does not say"})
    void leadAndRiser(PitPlace place, String text) {
        WaterJob job = sump(40.0).pitAt(place);
        assertThat(Checked.ids(job)).contains("sump-lead");
        if (text == null) {
            assertThat(Checked.ids(job)).doesNotContain("sump-riser");
        } else {
            assertThat(Checked.only(job, "sump-riser").values()).containsEntry("place", text);
        }
    }

    /** A sump that no drain runs into has no lead, and nothing is asked of the outlets that are none. */
    @Test
    void leadOnlyWhereADrainRunsIn() {
        Job job = sump(40.0).build();
        Job apart = JobPipes.withDrains(job, List.of());
        assertThat(Checked.findings(apart))
                .extracting(Finding::id)
                .contains("sump")
                .doesNotContain("sump-lead", "candidates-none");
        assertThat(Checked.ids(new WaterJob())).noneMatch(id -> id.startsWith("sump"));
    }

    /** A basin of which the job says nothing at all: least basin, no pump, place unknown. */
    @Test
    void sumpWithoutAPit() {
        Job job = sump(40.0).build();
        assertThat(Checked.findings(JobPipes.withOutlet(job, JobPipes::withoutPit)))
                .extracting(Finding::id)
                .contains("sump-basin-unknown", "sump-riser", "sump-head-unmeasured", "sump-inflow-unwatched")
                .doesNotContain("sump-basin-small");
    }

    /**
     * 18 in of basin by 12 in of drawdown hold 13.2 gal (H-40); 10 min of 25 gpm want 62.5 (H-37). Half in, half out:
     * 2.1 min.
     */
    @Test
    void shortCycleTellsItsFigures() {
        WaterJob job = new WaterJob().soil(Texture.SAND).sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0);
        assertThat(Checked.only(job, "sump-cycle").values())
                .containsEntry("storage", "13.2 gal")
                .containsEntry("wanted", "62.5 gal")
                .containsEntry("cycle", "2.1 min");
    }

    /** The point of the pump that is asked for, worked out above: 18.6 gpm at 9.68 ft. */
    @Test
    void figuresOfAFittingPump() {
        WaterJob job = new WaterJob().soil(Texture.SAND).sump(18.0, 24.0, 8.0, 40.0, 25.0, 11.0);
        assertThat(Checked.only(job, "sump-pump-fits").values())
                .containsEntry("pump", "25.0 gpm")
                .containsEntry("at", "11 ft")
                .containsEntry("flow", "18.6 gpm")
                .containsEntry("head", "9.7 ft");
    }

    /** Where the forecast is unknown, whatever was seen is more than any table says. */
    @Test
    void seenWithoutAForecast() {
        WaterJob job = sump(40.0).rain(null).downspout("DS1", 400, "D1").observed(2);
        assertThat(Checked.only(job, "sump-inflow-over-tables").values())
                .containsEntry("seen", "2.0 gpm")
                .containsEntry("high", "an unknown flow");
    }
}
