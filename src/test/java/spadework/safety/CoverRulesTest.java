// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.OutletKind;
import spadework.job.WaterJob;

/** Soil over solid pipe: 12 in under lawn (common practice, no source). */
class CoverRulesTest {

    /** SDR 35, 4 in: the pipe's top lies 0.341 ft over the invert at 92.20, so a foot of soil begins at 93.541. */
    @ParameterizedTest(name = "ground at {0}: thin {1}")
    @CsvSource({"93.55, false", "93.53, true", "92.00, true"})
    void coverAtTheStart(double ground, boolean expected) {
        assertThat(Checked.ids(new WaterJob().mainGrade(ground, 92.0)).contains("cover-thin"))
                .isEqualTo(expected);
    }

    /**
     * The end at 91.50 under ground of 92.00 has 2 in: that is how a pipe comes to daylight, not how it joins a storm
     * drain.
     */
    @ParameterizedTest(name = "{0}, ground at the end {1}: thin {2}, unmeasured {3}")
    @CsvSource(textBlock = """
            DAYLIGHT,       92.00, false, false
            APPROVED_STORM, 92.00, true,  false
            APPROVED_STORM, 92.90, false, false
            DAYLIGHT,       ,      false, false
            APPROVED_STORM, ,      false, true
            """)
    void coverAtTheEnd(OutletKind kind, Double ground, boolean thin, boolean unmeasured) {
        var found = Checked.ids(new WaterJob().outlet(kind, 91.0, 90.5).mainGrade(97.0, ground));
        assertThat(found.contains("cover-thin")).isEqualTo(thin);
        assertThat(found.contains("cover-unmeasured")).isEqualTo(unmeasured);
    }

    @Test
    void unknownGroundIsTold() {
        assertThat(Checked.only(new WaterJob().mainGrade(null, 92.0), "cover-unmeasured")
                        .about())
                .isEqualTo("M1");
    }

    @Test
    void roofLinesAreAsked() {
        assertThat(Checked.only(new WaterJob().roofLine("R1", 40, 96.5, 95.0, 97.0), "cover-thin")
                        .about())
                .isEqualTo("R1");
    }

    /** Ground 93.00 over a pipe whose top lies at 92.541: 5½ in of soil, and 6½ in more are asked for. */
    @Test
    void thinCoverTellsWhatItLacks() {
        assertThat(Checked.only(new WaterJob().mainGrade(93.0, 92.0), "cover-thin"))
                .satisfies(f -> assertThat(f.values())
                        .containsEntry("cover", "5½ in")
                        .containsEntry("least", "1 ft")
                        .containsEntry("more", "6½ in"));
    }

    /** Of two thin ends one is told, of a drain none: it lies under the stone of the wall. */
    @Test
    void onceForARun() {
        WaterJob job =
                new WaterJob().outlet(OutletKind.APPROVED_STORM, 91.0, 90.5).mainGrade(92.7, 92.0);
        assertThat(Checked.only(job, "cover-thin").about()).isEqualTo("M1");
        assertThat(Checked.ids(new WaterJob().drainGrade(92.6, 92.6))).doesNotContain("cover-thin");
    }

    /** Just 12 in over a pipe whose top lies (3.975 + 4.215) ÷ 24 ft over its invert are enough. */
    @Test
    void justAFootIsEnough() {
        double ground = 92.2 + (3.975 + 4.215) / 24 + 1;
        assertThat(Checked.ids(new WaterJob().mainGrade(ground, 92.0))).doesNotContain("cover-thin");
    }
}
