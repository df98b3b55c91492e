// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Severity;
import spadework.job.WaterJob;

/** Whether a footing drain lies low enough for the floor and not too low for the footing. */
class DepthRulesTest {

    /** IRC R405.1 (F-02): at or below what it protects. The floor lies at 93. */
    @ParameterizedTest(name = "high end at {0}: {1}")
    @CsvSource({"93.00, false", "93.01, true"})
    void drainLiesBelowTheFloor(double high, boolean expected) {
        assertThat(Checked.ids(new WaterJob().drain(high, 92.2)).contains("drain-above-floor"))
                .isEqualTo(expected);
    }

    @Test
    void unknownFloorIsTold() {
        assertThat(Checked.ids(new WaterJob().floor(null))).contains("floor-unmeasured");
        assertThat(Checked.ids(new WaterJob())).doesNotContain("floor-unmeasured");
    }

    /**
     * Ground 97.50, 5 ft to the footing's top, 8 in of footing: its bottom lies at 91.833. Never below it (VA drainage
     * manual, F-39). Stone of 2 in under a pipe with a wall of 0.17 in (IRC R405.1, F-05): from 92.014.
     */
    @ParameterizedTest(name = "low end at {0}: {1}")
    @CsvSource(textBlock = """
            92.02, ''
            92.01, stone-under-thin
            91.84, stone-under-thin
            91.83, invert-below-footing
            91.00, invert-below-footing
            """)
    void drainLiesAboveTheFootingsBottom(double low, String expected) {
        var found = Checked.ids(new WaterJob().drain(92.6, low).main(40, low, low - 1));
        assertThat(found.contains("stone-under-thin")).isEqualTo(expected.equals("stone-under-thin"));
        assertThat(found.contains("invert-below-footing")).isEqualTo(expected.equals("invert-below-footing"));
    }

    /**
     * A pipe of 4 in with a wall of 0.1075 in (4.215 in outside) whose invert lies at 92.6 has its top at 92.94: ground
     * that is not over it is a level read wrong (common practice, no source).
     */
    @ParameterizedTest(name = "ground at {0} and {1}: {2}")
    @CsvSource({"97.5, 97.5, ''", "92.96, 97.5, ''", "92.93, 97.5, start", "90, 97.5, start", "97.5, 90, end"})
    void groundLiesOverTheDrain(double start, double end, String where) {
        var found = Checked.findings(
                        new WaterJob().drain(92.6, 92.6).drainGrade(start, end).build())
                .stream()
                .filter(finding -> finding.id().equals("drain-over-ground"))
                .toList();
        assertThat(found).hasSize(where.isEmpty() ? 0 : 1);
        found.forEach(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.values()).containsEntry("where", where).containsEntry("invert", "92.60 ft");
        });
    }

    @Test
    void teeIsHeldToTheFootingToo() {
        WaterJob job = new WaterJob().drain(92.6, 92.6).teeInMiddle(91.7).main(40, 91.7, 91.0);
        assertThat(Checked.only(job, "invert-below-footing").values()).containsEntry("where", "tee");
    }

    @Test
    void invertBelowTheFootingIsAStopWithItsCure() {
        var found = Checked.only(new WaterJob().drain(92.6, 91.5).main(40, 91.5, 91.0), "invert-below-footing");
        assertThat(found.severity()).isEqualTo(Severity.STOP);
        assertThat(Checked.described(found)).contains("91.50 ft", "91.83 ft", "4 in", "92.02 ft");
    }

    @ParameterizedTest(name = "ground {0} and {1}: unknown {2}")
    @CsvSource({"97.5, 97.5, false", "97.5, , true", ", 97.5, true", ", , true"})
    void unknownGroundIsTold(Double start, Double end, boolean expected) {
        assertThat(Checked.ids(new WaterJob().drainGrade(start, end)).contains("footing-level-unknown"))
                .isEqualTo(expected);
    }

    /** At the footing's very bottom the pipe is not below it, but has no stone under it; 2 in over it it has. */
    @ParameterizedTest(name = "{0} in over the footing's bottom and the pipe's wall: {1}")
    @CsvSource({"0, stone-under-thin", "2, "})
    void justAtTheThresholds(double inches, String expected) {
        double bottom = 97.5 - 5 - 8.0 / 12;
        double shell = inches == 0 ? 0 : (4.215 - 3.875) / 24;
        double low = bottom + shell + inches / 12;
        var found = Checked.ids(new WaterJob().drain(92.6, low).main(40, low, low - 1));
        assertThat(found).doesNotContain("invert-below-footing");
        assertThat(found.contains("stone-under-thin")).isEqualTo(expected != null);
    }

    /** Each end is held to the footing beside it, and named. */
    @ParameterizedTest(name = "from {0} to {1}: {2}")
    @CsvSource({"91.7, 92.2, start", "92.6, 91.7, end"})
    void endBelowTheFootingIsNamed(double start, double end, String where) {
        WaterJob job = new WaterJob().drain(start, end).main(40, end, end - 1);
        assertThat(Checked.only(job, "invert-below-footing").values()).containsEntry("where", where);
    }

    /**
     * A tee in the middle is held to the higher of both ends: footing bottoms at 90.833 and 91.833, whichever end lies
     * higher.
     */
    @ParameterizedTest(name = "ground {0} to {1}, tee at {2}: {3}")
    @CsvSource({"96.5, 97.5, 91.5, true", "97.5, 96.5, 91.5, true", "96.5, 97.5, 91.9, false", "97.5, 96.5, 91.9, false"
    })
    void teeIsHeldToTheHigherFooting(double from, double to, double tee, boolean below) {
        WaterJob job = new WaterJob()
                .drain(92.6, 92.6)
                .drainGrade(from, to)
                .teeInMiddle(tee)
                .main(40, tee, tee - 0.5);
        assertThat(Checked.ids(job).contains("invert-below-footing")).isEqualTo(below);
    }
}
