// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.Seepage;
import spadework.job.Texture;
import spadework.job.Water;
import spadework.job.WaterJob;

/** Whether the pipes carry what flows in. */
class LoadRulesTest {

    /**
     * Roof line of SDR 35, inside 3.975 in, n 0.010, 1% (Manning, k 1.486): 109.3 gpm, which is 3,503 sf of roof at
     * 3 in/h by the code's 0.0104.
     */
    @ParameterizedTest(name = "{0} sf of roof: over capacity {1}")
    @CsvSource({"3490, false", "3520, true"})
    void roofLineCarriesItsRoof(double roof, boolean over) {
        WaterJob job = new WaterJob().roofLine("R1", 100, 95.0, 94.0, 98.0).downspout("DS1", roof, "R1");
        assertThat(Checked.ids(job).contains("over-capacity")).isEqualTo(over);
        assertThat(Checked.ids(job).contains("roof-share")).isEqualTo(!over);
    }

    /** Twice the water wants four times the slope, or a pipe wider by 2^(3/8), each rounded up so that it is enough. */
    @Test
    void overCapacityTellsItsCure() {
        WaterJob job = new WaterJob().roofLine("R1", 100, 95.0, 94.0, 98.0).downspout("DS1", 7006, "R1");
        var found = Checked.only(job, "over-capacity");
        assertThat(found.severity()).isEqualTo(Severity.MUST);
        assertThat(Checked.described(found)).contains("200%", "5.2 in", "4.01%");
    }

    /** A perforated 4 in pipe at 1%, n 0.020: 51 gpm. Sand may bring more to 400 ft of wall, not to 40. */
    @Test
    void seepageIsToldAsARangeWithItsShare() {
        var found = Checked.only(new WaterJob().soil(Texture.SAND), "seepage-share");
        assertThat(found.severity()).isEqualTo(Severity.ADVISE);
        assertThat(found.values().get("low")).isNotEqualTo(found.values().get("high"));
        assertThat(Checked.described(found)).contains("range, not a measurement");
    }

    @ParameterizedTest(name = "{0}: over capacity {1}")
    @CsvSource({"GRAVEL, true", "SAND, false", "LOAM, false"})
    void drainCarriesItsSeepage(Texture texture, boolean over) {
        assertThat(Checked.ids(new WaterJob().soil(texture)).contains("over-capacity"))
                .isEqualTo(over);
    }

    @ParameterizedTest(name = "rain {0} in/h, roof line {1}, uphill {2}: missing {3}")
    @CsvSource(textBlock = """
            3, true,  false, false
            ,  true,  false, true
            ,  false, true,  true
            ,  false, false, false
            """)
    void rainIsNeededWhereRoofOrGroundDrainsIn(Double rain, boolean roof, boolean uphill, boolean missing) {
        WaterJob job = new WaterJob().rain(rain);
        if (roof) {
            job.roofLine("R1", 40, 95.0, 94.0, 98.0).downspout("DS1", 400, "R1");
        }
        if (uphill) {
            job.uphill(2000, "0.2", "M1");
        }
        assertThat(Checked.ids(job).contains("rain-missing")).isEqualTo(missing);
        if (missing) {
            assertThat(Checked.only(job, "rain-missing").severity()).isEqualTo(Severity.MUST);
        }
    }

    @ParameterizedTest(name = "roof line takes {0} sf: missing {1}")
    @CsvSource({"0, true", "400, false"})
    void roofLineIsSizedForARoof(double roof, boolean missing) {
        WaterJob job = new WaterJob().roofLine("R1", 40, 95.0, 94.0, 98.0);
        if (roof > 0) {
            job.downspout("DS1", roof, "R1");
        }
        assertThat(Checked.ids(job).contains("roof-area-missing")).isEqualTo(missing);
    }

    @ParameterizedTest(name = "runoff into {0}: {1}")
    @CsvSource({"D1, true", "M1, true", "R1, false"})
    void surfaceWaterKeepsOutOfTheDrain(String run, boolean expected) {
        WaterJob job = new WaterJob().roofLine("R1", 40, 95.0, 94.0, 98.0).uphill(2000, "0.2", run);
        assertThat(Checked.ids(job).contains("surface-into-drain")).isEqualTo(expected);
    }

    /**
     * ASABE and NRCS practice (H-08): 1.4 ft/s with fine sand or silt, 0.5 without. Perforated 4 in, n 0.020, runs at
     * 1.4 ft/s at 1.02%: over 40 ft 0.408 ft; at 0.5 ft/s at 0.13%: 0.052 ft.
     */
    @ParameterizedTest(name = "{0}, drain falls {1} ft in 40: slow {2}")
    @CsvSource(textBlock = """
            LOAM,   0.40, true
            LOAM,   0.42, false
            GRAVEL, 0.40, false
            GRAVEL, 0.06, false
            GRAVEL, 0.05, true
            """)
    void drainRunsFastEnoughToStayClean(Texture texture, double fall, boolean slow) {
        WaterJob job = new WaterJob().soil(texture).drain(92.2 + fall, 92.2);
        assertThat(Checked.ids(job).contains("slow-drain")).isEqualTo(slow);
    }

    @Test
    void twoSidesOfADrainAreToldOnceAsSlow() {
        WaterJob job = new WaterJob().drain(92.4, 92.4).teeInMiddle(92.3);
        assertThat(Checked.only(job, "slow-drain").about()).isEqualTo("D1");
    }

    /** 400 sf at 3 in/h are 12.5 gpm (0.0104, H-18), 8% of what a 4 in pipe of SDR 35 carries at 2%: 154.4 gpm. */
    @Test
    void roofShareTellsItsFigures() {
        WaterJob job = new WaterJob().roofLine("R1", 50, 95.0, 94.0, 98.0).downspout("DS1", 400, "R1");
        var found = Checked.only(job, "roof-share");
        assertThat(found.about()).isEqualTo("R1");
        assertThat(found.values())
                .containsEntry("flow", "12.5 gpm")
                .containsEntry("rain", "3.0 in/h")
                .containsEntry("source", "test")
                .containsEntry("capacity", "154.4 gpm")
                .containsEntry("share", "8%");
    }

    /** Tables of loam end at 0.61 in/h (H-28), those of every texture at 26.779 cm/h, 10.5 in/h (H-27). */
    @Test
    void freeWaterInSlowSoilTellsBothRanges() {
        var found = Checked.only(new WaterJob().seeping(Seepage.FREE), "seepage-beyond-tables");
        assertThat(found.values())
                .containsEntry("texture", "loam")
                .containsEntry("tables", "0.61 in/h")
                .containsEntry("taken", "10.5 in/h");
        Job job = new WaterJob().seeping(Seepage.FREE).build();
        Water w = job.water();
        Job undrained = job.withWater(
                new Water(List.of(), w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()));
        assertThat(Checked.findings(undrained))
                .extracting(Finding::id)
                .as("no drain takes it in")
                .doesNotContain("seepage-beyond-tables");
    }

    /** A drain at 0.5% runs at 0.98 ft/s by Manning (4 in, n 0.020): slower than 1.4 ft/s. */
    @Test
    void slowDrainTellsItsSpeed() {
        var slow = Checked.only(new WaterJob().drain(92.4, 92.2), "slow-drain");
        assertThat(slow.values()).containsEntry("speed", "0.98 ft/s").containsEntry("least", "1.4 ft/s");
        assertThat(slow.severity()).isEqualTo(Severity.ADVISE);
        assertThat(Checked.only(new WaterJob().soil(Texture.GRAVEL).drain(92.24, 92.2), "slow-drain")
                        .values())
                .containsEntry("least", "0.5 ft/s");
    }

    /** Of a drain's two sides the slower is told: 0.2 ft in 20 ft run faster than 0.05 ft. */
    @ParameterizedTest(name = "from {0} and {1} to 92.3")
    @CsvSource({"92.5, 92.35", "92.35, 92.5"})
    void slowerSideIsTold(double start, double end) {
        WaterJob sides = new WaterJob().drain(start, end).teeInMiddle(92.3).main(40, 92.2, 91.5);
        WaterJob alone = new WaterJob().drain(92.35, 92.35).teeInMiddle(92.3).main(40, 92.2, 91.5);
        assertThat(Checked.only(sides, "slow-drain").values())
                .isEqualTo(Checked.only(alone, "slow-drain").values());
    }

    /** A main that carries what its drain brings is not told; a flat one that does not run has no capacity to tell. */
    @Test
    void mainIsToldOnlyWhereItIsTooSmall() {
        assertThat(Checked.findings(new WaterJob().build()))
                .noneMatch(f -> f.about().equals("M1") && f.id().endsWith("-share"));
        assertThat(Checked.ids(new WaterJob().drain(92.6, null))).doesNotContain("seepage-share", "over-capacity");
    }
}
