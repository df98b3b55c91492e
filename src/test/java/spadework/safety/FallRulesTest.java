// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.TeeAt;
import spadework.job.WaterJob;

/** Whether every pipe falls, and enough. */
class FallRulesTest {
    private static final Set<String> IDS = Set.of(
            "levels-unmeasured",
            "tee-unmeasured",
            "back-pitch",
            "too-flat",
            "drain-flat",
            "drain-under-target",
            "joins-uphill");

    private static List<String> fall(WaterJob job) {
        return Checked.ids(job).stream().filter(IDS::contains).toList();
    }

    @Test
    void soundJobHasNone() {
        assertThat(fall(new WaterJob())).isEmpty();
    }

    /** 1/8 in a foot to 6 in, 1/16 from 8 in (IPC 704.1 as in Chicago Table 18-29-704.1, G-03). Over 48 ft: 6 in. */
    @ParameterizedTest(name = "main {2} of 48 ft falls {0} ft: {1}")
    @CsvSource(textBlock = """
            0.501, '',         MAIN-4
            0.500, '',         MAIN-4
            0.499, too-flat,   MAIN-4
            0.499, too-flat,   MAIN-6
            0.001, too-flat,   MAIN-4
            0.000, back-pitch, MAIN-4
            -0.10, back-pitch, MAIN-4
            """)
    void solidPipe(double fall, String expected, String item) {
        List<String> found = fall(new WaterJob().mainItem(item).main(48, 92.2, 92.2 - fall));
        assertThat(found).isEqualTo(expected.isEmpty() ? List.of() : List.of(expected));
    }

    /**
     * Over 40 ft: target 1% is 0.4 ft, floor 0.5% is 0.2 ft (common practice, no source; UFC 3-270-04 s.12.6 has
     * 0.15%, H-09); backward is a stop.
     */
    @ParameterizedTest(name = "drain of 40 ft falls {0} ft: {1} {2}")
    @CsvSource(textBlock = """
            0.41,  '',                 ''
            0.40,  '',                 ''
            0.39,  drain-under-target, ADVISE
            0.20,  drain-under-target, ADVISE
            0.19,  drain-flat,         MUST
            0.05,  drain-flat,         MUST
            0.00,  drain-flat,         MUST
            -0.01, back-pitch,         STOP
            """)
    void perforatedPipe(double fall, String expected, String severity) {
        WaterJob job = new WaterJob().drain(92.2 + fall, 92.2);
        assertThat(fall(job)).isEqualTo(expected.isEmpty() ? List.of() : List.of(expected));
        if (!expected.isEmpty()) {
            assertThat(Checked.only(job, expected).severity()).isEqualTo(Severity.valueOf(severity));
        }
    }

    @ParameterizedTest(name = "tee at the {2}, {0} to {1}: {3}")
    @CsvSource(textBlock = """
            92.6, 92.2, END,   ''
            92.2, 92.6, END,   back-pitch
            92.2, 92.6, START, ''
            92.6, 92.2, START, back-pitch
            """)
    void directionFollowsTheTee(double start, double end, TeeAt tee, String expected) {
        List<String> found = fall(new WaterJob().drain(start, end).teeAt(tee));
        assertThat(found.contains("back-pitch")).isEqualTo(expected.startsWith("back-pitch"));
    }

    @ParameterizedTest(name = "tee in the middle at {0}, ends at 92.6: {1}")
    @CsvSource({"92.4, ''", "92.7, back-pitch", ", tee-unmeasured"})
    void bothSidesRunToATeeInTheMiddle(Double tee, String expected) {
        List<String> found = fall(new WaterJob().drain(92.6, 92.6).teeInMiddle(tee));
        assertThat(found).isEqualTo(expected.isEmpty() ? List.of() : List.of(expected, expected));
    }

    /** 0.001 ft short of 0.5 ft: half an inch is asked for, never nothing. */
    @Test
    void whatIsAskedForIsNeverNothing() {
        assertThat(Checked.only(new WaterJob().main(48, 92.2, 91.701), "too-flat")
                        .values())
                .containsEntry("more", "½ in");
        assertThat(Checked.only(new WaterJob().main(40, 92.201, 91.5), "joins-uphill")
                        .values())
                .containsEntry("step", "½ in");
    }

    @Test
    void sideIsNamed() {
        List<Finding> found = Checked.findings(
                new WaterJob().drain(92.6, 92.2).teeInMiddle(92.4).build());
        assertThat(found)
                .filteredOn(f -> f.id().equals("back-pitch"))
                .extracting(Finding::about)
                .containsExactly("D1/2");
    }

    @ParameterizedTest(name = "main begins at {0}, drain ends at 92.2: {1}")
    @CsvSource({"92.21, true", "92.20, false", "92.10, false"})
    void waterDoesNotStepUp(double mainStart, boolean expected) {
        assertThat(fall(new WaterJob().main(40, mainStart, 91.5)).contains("joins-uphill"))
                .isEqualTo(expected);
    }

    @Test
    void unmeasuredLevelIsToldForEachRun() {
        assertThat(Checked.only(new WaterJob().drain(92.6, null), "levels-unmeasured")
                        .about())
                .isEqualTo("D1");
        assertThat(Checked.only(new WaterJob().main(40, 92.2, null), "levels-unmeasured")
                        .about())
                .isEqualTo("M1");
    }

    /** 48 ft at 1/8 in a foot from 92.20: the low end belongs at 91.70 or deeper. */
    @Test
    void cureCarriesItsNumber() {
        assertThat(Checked.described(Checked.only(new WaterJob().main(48, 92.2, 92.3), "back-pitch")))
                .contains("91.70 ft");
        assertThat(Checked.described(Checked.only(new WaterJob().main(48, 92.2, 92.0), "too-flat")))
                .contains("4 in more fall", "91.70 ft", "0.42%", "1.04%");
    }

    /**
     * A tee in the middle whose ends are known lacks its own level alone; where an end is missing, the end is asked.
     */
    @ParameterizedTest(name = "from {0} to {1}: {2}")
    @CsvSource({"92.6, 92.6, tee-unmeasured", "92.6, , levels-unmeasured", ", 92.6, levels-unmeasured"})
    void levelThatIsMissingIsTheOneThatIsAsked(Double start, Double end, String expected) {
        List<Finding> found = Checked.findings(
                        new WaterJob().drain(start, end).teeInMiddle(null).build())
                .stream()
                .filter(f -> f.id().endsWith("-unmeasured") && f.about().startsWith("D1"))
                .toList();
        assertThat(found).extracting(Finding::id).containsExactly(expected, expected);
        assertThat(found).extracting(Finding::about).containsExactly("D1/1", "D1/2");
    }

    /** With its tee known and an end missing, only the side of that end is unmeasured. */
    @Test
    void otherSideOfTheTeeIsMeasured() {
        List<Finding> found = Checked.findings(
                new WaterJob().drain(null, 92.6).teeInMiddle(92.2).build());
        assertThat(found)
                .filteredOn(f -> f.id().equals("levels-unmeasured"))
                .extracting(Finding::about)
                .containsExactly("D1/1");
        assertThat(found).noneMatch(f -> f.id().equals("tee-unmeasured"));
    }

    @Test
    void sourceOfAMissingLevelIsThatOfItsPipe() {
        assertThat(Checked.only(new WaterJob().drain(92.6, null), "levels-unmeasured")
                        .citation())
                .startsWith("IRC R405.1");
        assertThat(Checked.only(new WaterJob().main(40, 92.2, null), "levels-unmeasured")
                        .citation())
                .startsWith("IPC 704.1");
    }

    /** 40 ft at 0.5% want 0.2 ft: with 0.1 ft the drain lacks 1½ in, its low end belongs at 92.10 ft or deeper. */
    @Test
    void flatDrainTellsWhatItLacks() {
        assertThat(Checked.only(new WaterJob().drain(92.3, 92.2), "drain-flat").values())
                .containsEntry("slope", "0.25%")
                .containsEntry("least", "0.50%")
                .containsEntry("fall", "1 in")
                .containsEntry("length", "40 ft")
                .containsEntry("more", "1½ in")
                .containsEntry("low", "92.10 ft");
        assertThat(Checked.only(new WaterJob().drain(92.5, 92.2), "drain-under-target")
                        .values())
                .containsEntry("least", "1.00%")
                .containsEntry("low", "92.10 ft");
    }

    /** A drain laid backward belongs 0.2 ft under its high end, by the floor of 0.5%. */
    @Test
    void backwardDrainTellsItsLevels() {
        assertThat(Checked.only(new WaterJob().drain(92.2, 92.4).main(40, 92.2, 91.5), "back-pitch")
                        .values())
                .containsEntry("start", "92.20 ft")
                .containsEntry("end", "92.40 ft")
                .containsEntry("low", "92.00 ft");
    }

    /** Water that comes out at 92.20 cannot enter at 92.50. */
    @Test
    void stepIsToldWithBothPipes() {
        assertThat(Checked.only(new WaterJob().main(40, 92.5, 91.5), "joins-uphill"))
                .satisfies(f -> {
                    assertThat(f.severity()).isEqualTo(Severity.STOP);
                    assertThat(f.about()).isEqualTo("M1");
                    assertThat(f.values())
                            .containsEntry("above", "D1")
                            .containsEntry("out", "92.20 ft")
                            .containsEntry("in", "92.50 ft")
                            .containsEntry("step", "4 in");
                });
    }

    /** A pump lifts the water of a sump: its discharge pipe is not asked for a fall. */
    @Test
    void dischargePipeNeedsNoFall() {
        assertThat(fall(new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0))).isEmpty();
    }
}
