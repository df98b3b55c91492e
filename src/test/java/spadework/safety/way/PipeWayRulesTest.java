// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.PlanJob;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.measure.Length;

/**
 * Ways by hand, of a house 42 ft wide and 28 ft deep with wall A along all of its north side and wall B along 26 ft of
 * its east side from the north corner. All of it is invented.
 */
class PipeWayRulesTest {
    private static final String PRACTICE = "common practice, no source";

    @ParameterizedTest(name = "tee at the {0}, outlet on the {1}, {2} ft of pipe: {3}")
    @CsvSource(textBlock = """
            END,    north, 84,    ,                            26 ft up the east side and 60 ft out less 2 ft
            END,    north, 83.9,  main-shorter-other-end-fits, the same; from the north-west corner it is 60 ft
            END,    south, 60,    ,                            2 ft down the east side and 60 ft out less 2 ft
            END,    south, 59.9,  main-shorter-than-way,       the same; from the north-west corner it is 28 and 60 ft
            START,  north, 58,    ,                            the drain ends on the side of the outlet
            START,  north, 57.9,  main-shorter-than-way,       from the other end it is longer
            END,    west,  102,   ,                            2 ft down the east side and 42 ft along the south
            END,    west,  101.9, main-shorter-other-end-fits, the same; the north-west corner lies on the west side
            END,    east,  58,    ,                            straight out
            MIDDLE, north, 58,    ,                            34 ft along wall A and straight out
            MIDDLE, north, 57.9,  main-shorter-than-way,       a tee in the middle has no other end
            """)
    void main(TeeAt tee, String side, double length, String id, String byHand) {
        List<Finding> found = PipeWayRules.check(walls().drain("D1", tee, "M1", "A", "B")
                .main("M1", "O1", length)
                .outlet("O1", "swale along the " + side + " lot line", 60)
                .job());
        assertThat(found).as(byHand).extracting(Finding::id).isEqualTo(id == null ? List.of() : List.of(id));
    }

    @Test
    void theFindingTellsBothLengthsAndWhatNoPricePays() {
        PlanJob job = walls().drain("D1", TeeAt.END, "M1", "A", "B").main("M1", "O1", 64);
        assertThat(PipeWayRules.check(
                        job.outlet("O1", "swale along the north lot line", 60).job()))
                .containsExactly(new Finding(
                        "main-shorter-other-end-fits",
                        Severity.MUST,
                        "M1",
                        Map.of("length", "64 ft", "way", "86 ft", "short", "22 ft", "other", "60 ft"),
                        PRACTICE));
    }

    @Test
    void aMainThatTwoDrainsFeedPassesBothTees() {
        PlanJob job = walls().drain("D1", TeeAt.END, "M1", "A")
                .drain("D2", TeeAt.END, "M1", "B")
                .outlet("O1", "swale along the east lot line", 50);
        // The tees lie at the north-east corner and 26 ft south of it; on the slant 26 ft come down to 22.52 ft.
        assertThat(PipeWayRules.check(job.main("M1", "O1", 70.6).job())).isEmpty();
        PlanJob shorter = walls().drain("D1", TeeAt.END, "M1", "A")
                .drain("D2", TeeAt.END, "M1", "B")
                .outlet("O1", "swale along the east lot line", 50)
                .main("M1", "O1", 70.5);
        assertThat(PipeWayRules.check(shorter.job()))
                .extracting(Finding::id, finding -> finding.values().get("way"))
                .containsExactly(tuple("main-shorter-than-way", "76 ft"));
    }

    @ParameterizedTest(name = "downspouts {0} ft apart, {1} ft of pipe: {2}")
    @CsvSource(textBlock = """
            37, 96.1, ,                           37 and 66 ft less 2 ft and 37 ft times 0.13397
            37, 96,   roof-line-shorter-than-way, a little less
            37, 78,   roof-line-shorter-than-way, 25 ft less
            12, 78,   ,                           12 and 66 ft
            """)
    void roofLine(double apart, double length, String id, String byHand) {
        List<Finding> found = PipeWayRules.check(walls().downspout("DS1", "R1", Side.NORTH, 3)
                .downspout("DS2", "R1", Side.NORTH, 3 + apart)
                .roofLine("R1", "O2", length)
                .outlet("O2", "swale along the north lot line", 66)
                .job());
        assertThat(found).as(byHand).extracting(Finding::id).isEqualTo(id == null ? List.of() : List.of(id));
    }

    @Test
    void aRoofLineGoesTheShorterWayRoundTheHouse() {
        List<Finding> found = PipeWayRules.check(walls().downspout("DS1", "R1", Side.WEST, 18)
                .downspout("DS2", "R1", Side.EAST, 18)
                .roofLine("R1", "O2", 60)
                .outlet("O2", "storm drain south of the house", 40)
                .job());
        // 10 ft down the west side, 42 ft along the south, 10 ft up the east and 40 ft out.
        assertThat(found)
                .singleElement()
                .satisfies(finding -> assertThat(finding.values())
                        .containsEntry("way", "102 ft")
                        .containsEntry("short", "42 ft"));
    }

    @Test
    void aDownspoutWithoutAPlaceIsToldAndTheRestIsCompared() {
        PlanJob job = walls().downspout("DS1", "R1", Side.EAST, 20)
                .downspout("DS2", "R1")
                .outlet("O2", "swale along the south lot line", 40);
        assertThat(PipeWayRules.check(job.roofLine("R1", "O2", 45.9).job()))
                .extracting(Finding::id)
                .containsExactly("roof-line-shorter-than-way", "downspouts-unplaced");
    }

    @Test
    void whereTheSideOfTheOutletIsUnknownItsDistanceIsComparedAlone() {
        PlanJob job = walls().drain("D1", TeeAt.END, "M1", "A", "B").outlet("O1", "low ground", 60);
        assertThat(PipeWayRules.check(job.main("M1", "O1", 58).job()))
                .containsExactly(new Finding("way-unknown", Severity.ADVISE, "M1", Map.of(), PRACTICE));
        PlanJob shorter = walls().drain("D1", TeeAt.END, "M1", "A", "B").outlet("O1", "low ground", 60);
        assertThat(PipeWayRules.check(shorter.main("M1", "O1", 57).job()))
                .extracting(Finding::id)
                .containsExactly("main-shorter-than-way", "way-unknown");
    }

    @Test
    void whereTheDistanceOfTheOutletIsUnknownTheWayAlongTheHouseIsComparedAlone() {
        PlanJob job = walls().drain("D1", TeeAt.END, "M1", "A", "B")
                .outlet("O1", OutletKind.DAYLIGHT, "swale along the north lot line");
        assertThat(PipeWayRules.check(job.main("M1", "O1", 24).job()))
                .extracting(Finding::id)
                .containsExactly("way-unknown");
    }

    @ParameterizedTest(name = "basin {0} ft off, {1} ft of discharge pipe: {2}")
    @CsvSource(textBlock = """
            10, 19.8, ,                           34 ft less 6 in of footing and 10 ft and half a hole of 3 ft 6 in less 2 ft
            10, 19.7, discharge-shorter-than-way, a little less
            ,   38,   discharge-way-unknown,      nobody measured how far the basin lies from the footing
            """)
    void discharge(Double fromFooting, double pipe, String id, String byHand) {
        Optional<Length> off = Optional.ofNullable(fromFooting).map(Length::ofFeet);
        PlanJob job = walls().sump("S1", PitPlace.OUTSIDE, off, Optional.of(Length.ofFeet(34)), pipe);
        assertThat(PipeWayRules.check(job.job()))
                .as(byHand)
                .extracting(Finding::id)
                .isEqualTo(id == null ? List.of() : List.of(id));
    }

    @Test
    void aLeadStraightIntoABasinIsAsLongAsItLiesFromTheFooting() {
        PlanJob known = walls().drain("D1", TeeAt.END, "S1", "A", "B")
                .sump("S1", PitPlace.OUTSIDE, Optional.of(Length.ofFeet(10)), Optional.of(Length.ofFeet(34)), 38);
        assertThat(PipeWayRules.check(known.job()))
                .containsExactly(new Finding(
                        "lead-by-plan", Severity.ADVISE, "D1", Map.of("sump", "S1", "length", "10 ft"), PRACTICE));
        PlanJob unknown = walls().drain("D1", TeeAt.END, "S1", "A", "B")
                .sump("S1", PitPlace.OUTSIDE, Optional.empty(), Optional.of(Length.ofFeet(34)), 38);
        assertThat(PipeWayRules.check(unknown.job()))
                .extracting(Finding::id, Finding::severity)
                .containsExactly(tuple("discharge-way-unknown", Severity.ADVISE), tuple("lead-unknown", Severity.MUST));
        PlanJob byMain = walls().drain("D1", TeeAt.END, "M1", "A", "B")
                .main("M1", "S1", 40)
                .sump("S1", PitPlace.OUTSIDE, Optional.of(Length.ofFeet(10)), Optional.of(Length.ofFeet(34)), 38);
        assertThat(PipeWayRules.check(byMain.job())).extracting(Finding::id).doesNotContain("lead-by-plan");
    }

    @Test
    void fromABasinInTheHouseThePipeIsAtLeastAsLongAsItLeadsAway() {
        PlanJob job = walls().sump("S1", PitPlace.INSIDE, Optional.empty(), Optional.of(Length.ofFeet(20)), 12);
        assertThat(PipeWayRules.check(job.job()))
                .containsExactly(new Finding(
                        "discharge-shorter-than-way",
                        Severity.MUST,
                        "S1",
                        Map.of("length", "12 ft", "way", "20 ft", "short", "8 ft"),
                        PRACTICE));
        PlanJob unknown = walls().sump("S1", PitPlace.INSIDE, Optional.empty(), Optional.empty(), 12);
        assertThat(PipeWayRules.check(unknown.job())).extracting(Finding::id).containsExactly("discharge-way-unknown");
    }

    private static PlanJob walls() {
        return PlanJob.house(42, 28).wall("A", Side.NORTH, 0, 42).wall("B", Side.EAST, 0, 26);
    }
}
