// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.PitPlace;
import spadework.job.SolidRun;
import spadework.job.TrenchSize;
import spadework.job.WaterJob;
import spadework.measure.Length;

/**
 * Each hole speaks once. A run that lies wholly in a wall's trench or in a sump's hole is kept safe by what is asked
 * there; as soon as a part of it lies elsewhere, or deeper, it is asked for itself.
 */
class DugOnceRulesTest {
    /** What trenches are asked for by their depth. */
    private static final Set<String> DUTIES = Set.of(
            "upright-shallow",
            "upright-seeping",
            "upright-too-deep",
            "slope-back",
            "slope-shallow",
            "shield",
            "ladder",
            "air-test",
            "bench-back",
            "bank-too-steep",
            "trench-over-20");

    private static TrenchSize size(double depth) {
        return new TrenchSize(Length.ofFeet(1), Length.ofFeet(depth));
    }

    private static Job main(SolidRun run) {
        return JobPipes.withMains(new WaterJob().build(), run);
    }

    private static boolean isNamed(Job job, Set<String> ids, String label) {
        return Checked.findings(job).stream()
                .filter(finding -> ids.contains(finding.id()))
                .anyMatch(finding -> finding.values().get("at").contains(label));
    }

    /**
     * The wall's trench is 5 ft 8 in deep and sloped 1 to 1, 2 ft wide at its bottom: from the tee in the middle it
     * reaches 1 + 2.667 ft at 3 ft under grade, and 1 ft at its own bottom.
     */
    @ParameterizedTest(name = "main of {0} ft, {1} ft deep: asked for itself {2}")
    @CsvSource({
        "3.66, 3, false",
        "3.67, 3, true",
        "40, 3, true",
        "0.99, 5.66, false",
        "1.01, 5.66, true",
        "0.9, 5.7, true",
        "0.9, 7, true",
    })
    void mainInTheTrench(double length, double depth, boolean asked) {
        Job job = main(JobPipes.run("M1", length, size(depth)));
        assertThat(isNamed(job, DUTIES, "M1")).isEqualTo(asked);
        assertThat(isNamed(job, DUTIES, "wall A")).isTrue();
    }

    /** Nobody measured how deep it is: that stays to be told, wherever it lies. */
    @Test
    void typedDepthIsTold() {
        assertThat(isNamed(main(JobPipes.run("M1", 3, size(3))), Set.of("trench-depth-typed"), "M1"))
                .isTrue();
        assertThat(isNamed(main(JobPipes.run("M1", 3, size(3), 5.5, 5.5)), Set.of("trench-depth-differs"), "M1"))
                .isTrue();
    }

    /** No duty is lost with the run: all that a job without it must do stands there with it. */
    @Test
    void noMustIsLost() {
        Set<String> without = musts(JobPipes.withMains(new WaterJob().build()));
        assertThat(musts(main(JobPipes.run("M1", 3, size(3))))).containsAll(without);
        assertThat(without).contains("slope-back", "ladder");
    }

    private static Set<String> musts(Job job) {
        return Checked.findings(job).stream()
                .filter(finding -> finding.severity() != Severity.ADVISE && DUTIES.contains(finding.id()))
                .map(Finding::id)
                .collect(Collectors.toSet());
    }

    /** A roof line that lies along the wall, so far as the job says so. */
    @ParameterizedTest(name = "roof line of {0} ft, {1} ft of it along the wall: asked for itself {2}")
    @CsvSource({"30, 30, false", "38, 38, false", "36, 30, false", "37, 30, true", "30, , true"})
    void roofLineInTheTrench(double length, Double along, boolean asked) {
        SolidRun line = JobPipes.run("R1", length, size(2));
        Job job = JobPipes.withRoofLines(
                new WaterJob().build(), along == null ? line : JobPipes.beside(line, "A", along));
        assertThat(isNamed(job, DUTIES, "R1")).isEqualTo(asked);
    }

    /** The hole is 3 ft 6 in wide and deeper than the pipe; the pipe leaves its middle. */
    @ParameterizedTest(name = "discharge pipe of {0} ft: asked for itself {1}")
    @CsvSource({"1.7, false", "1.8, true", "30, true"})
    void dischargePipeInTheHole(double length, boolean asked) {
        Job job = JobPipes.withOutlet(
                new WaterJob().sump(18.0, 24.0, 8.0, length, 40.0, 20.0).build(),
                outlet -> JobPipes.pitAt(outlet, PitPlace.OUTSIDE, Optional.empty()));
        assertThat(isNamed(job, DUTIES, "discharge pipe O1")).isEqualTo(asked);
        assertThat(isNamed(job, DUTIES, "sump pit O1")).isTrue();
    }

    /** What is asked of one place is found once: no label stands twice in findings of one name. */
    @Test
    void eachPlaceOnce() {
        List<Finding> found = Checked.findings(main(JobPipes.run("M1", 40, size(6)))).stream()
                .filter(finding -> DUTIES.contains(finding.id()))
                .toList();
        assertThat(found.stream().map(finding -> finding.id() + " " + finding.about()))
                .doesNotHaveDuplicates()
                .isNotEmpty();
    }
}
