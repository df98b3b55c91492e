// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.ground.DigBodies;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.job.WaterJob;
import spadework.samples.Samples;

/** Where a drain runs into its main the ground has one level. */
class JoinRulesTest {

    /** Two levels may differ by two inches: common practice, no source. */
    @ParameterizedTest(name = "tee at the {0}, drain {1} to {2}, main {3}: {4}")
    @CsvSource({
        "END,    96.00, 97.50, 97.50, false",
        "END,    96.00, 97.50, 97.34, false",
        "END,    96.00, 97.50, 97.33, true",
        "END,    96.00, 97.50, 97.66, false",
        "END,    96.00, 97.50, 97.67, true",
        "START,  97.50, 96.00, 97.34, false",
        "START,  97.50, 96.00, 97.33, true",
        "MIDDLE, 97.50, 97.50, 97.34, false",
        "MIDDLE, 97.50, 97.50, 97.33, true",
        "END,    96.00, ,      90.00, false",
        "END,    96.00, 97.50, ,      false"
    })
    void theGroundWhereADrainMeetsItsMainHasOneLevel(
            TeeAt tee, Double start, Double end, Double main, boolean expected) {
        WaterJob job = new WaterJob().teeAt(tee).drainGrade(start, end).mainGrade(main, 91.0);

        assertThat(Checked.ids(job).contains("join-ground-differs")).isEqualTo(expected);
    }

    @Test
    void theFindingNamesBothLevelsAndTheMend() {
        Finding found =
                Checked.only(new WaterJob().drainGrade(97.5, 97.5).mainGrade(97.0, 91.0), "join-ground-differs");

        assertThat(found.about()).isEqualTo("M1");
        assertThat(Checked.described(found)).contains("D1", "97.50 ft", "97.00 ft", "6 in apart", "Shoot it again");
    }

    /** The main starts at 92.20 on 2 in of bedding: from 97.50 that is 5 ft 5.6 in, from 97.00 6 in less. */
    @ParameterizedTest(name = "drain {0}, main {1}: the trench is {2} ft deep")
    @CsvSource({"97.5, 97.0, 5.4667", "97.0, 97.5, 5.4667", "97.0, 97.0, 4.9667"})
    void theHigherGroundDecidesHowDeepTheMainIsDug(double drain, double main, double depth) {
        Job job = new WaterJob().drainGrade(97.5, drain).mainGrade(main, 91.0).build();

        double deepest = DigBodies.of(job).stream()
                .filter(body -> body.label().equals("M1"))
                .findFirst()
                .orElseThrow()
                .deepest()
                .feet();
        assertThat(deepest).isCloseTo(depth, within(1e-3));
    }

    @Test
    void theSamplesAgree() {
        Samples.papered()
                .forEach(sample -> assertThat(Samples.bid(sample).findings())
                        .as(sample.toString())
                        .extracting(Finding::id)
                        .doesNotContainAnyElementsOf(List.of("join-ground-differs")));
    }
}
