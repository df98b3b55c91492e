// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Water;
import spadework.job.WaterJob;
import spadework.measure.Length;

/** Whether the water gets out where it is led. */
class OutletRulesTest {

    /** The main ends at 91.50. */
    @ParameterizedTest(name = "{0}, outlet {1}, highest water {2}: {3} {4}")
    @CsvSource(textBlock = """
            DAYLIGHT,       91.0,  91.50, outlet-below-water,      false
            DAYLIGHT,       91.0,  91.51, outlet-below-water,      true
            APPROVED_STORM, 91.0,  91.51, outlet-below-water,      true
            DAYLIGHT,       91.50, 90.0,  outlet-below-level,      false
            DAYLIGHT,       91.51, 90.0,  outlet-below-level,      true
            DAYLIGHT,       91.0,  ,      outlet-water-unmeasured, true
            DAYLIGHT,       91.0,  90.0,  outlet-water-unmeasured, false
            DAYLIGHT,       91.0,  90.0,  outlet-guard,            true
            APPROVED_STORM, 91.0,  90.0,  outlet-guard,            false
            DAYLIGHT,       91.0,  90.0,  outlet-freezing,         true
            APPROVED_STORM, 91.0,  90.0,  outlet-freezing,         false
            DAYLIGHT,       91.0,  90.0,  never-sanitary,          true
            """)
    void outletIsFree(OutletKind kind, Double level, Double water, String id, boolean expected) {
        assertThat(Checked.ids(new WaterJob().outlet(kind, level, water)).contains(id))
                .isEqualTo(expected);
    }

    /** The main ends at 91.50 with its bottom. */
    @ParameterizedTest(name = "{0}, ground at the end {1}: {2}")
    @CsvSource({
        "DAYLIGHT,       91.50, ",
        "DAYLIGHT,       91.51, outlet-under-ground",
        "DAYLIGHT,       ,      outlet-ground-unmeasured",
        "APPROVED_STORM, 91.51, "
    })
    void aPipeEndsAboveTheGroundAtItsOutlet(OutletKind kind, Double ground, String expected) {
        WaterJob job = new WaterJob().mainGrade(97.0, ground).outlet(kind, 91.0, 90.5);
        assertThat(Checked.ids(job))
                .filteredOn(Set.of("outlet-under-ground", "outlet-ground-unmeasured")::contains)
                .isEqualTo(expected == null ? List.of() : List.of(expected));
    }

    @Test
    void anOutletUnderItsGroundIsToldByHowMuchAndHowToMendIt() {
        WaterJob job = new WaterJob().mainGrade(97.0, 91.75);
        assertThat(Checked.described(Checked.only(job, "outlet-under-ground")))
                .contains("91.50 ft", "91.75 ft", "3 in under the ground", "swale", "further", "move");
    }

    /** A roof line ends at an outlet as a main does. */
    @Test
    void aRoofLineIsHeldToItsGroundToo() {
        WaterJob job = new WaterJob().mainGrade(97.0, 91.0).roofLine("R1", 40, 95.0, 94.0, 98.0);
        assertThat(Checked.only(job, "outlet-under-ground").values())
                .containsEntry("run", "R1")
                .containsEntry("below", "4 ft");
    }

    @Test
    void drownedOutletIsAStopWithItsCure() {
        var found = Checked.only(new WaterJob().outlet(OutletKind.DAYLIGHT, 91.0, 92.0), "outlet-below-water");
        assertThat(found.severity()).isEqualTo(Severity.STOP);
        assertThat(Checked.described(found)).contains("91.50 ft", "92.00 ft", "6 in", "sump");
    }

    @ParameterizedTest(name = "downspout into {0}: stop {1}")
    @CsvSource({"D1, true", "M1, true", "R1, false"})
    void roofWaterHasALineOfItsOwn(String run, boolean expected) {
        WaterJob job = new WaterJob().roofLine("R1", 40, 95.0, 94.0, 98.0).downspout("DS1", 300, run);
        assertThat(Checked.ids(job).contains("roof-into-drain")).isEqualTo(expected);
    }

    private static Outlet outlet(Outlet o, Double house, Double line) {
        return new Outlet(
                o.label(),
                o.kind(),
                o.what(),
                o.level(),
                Optional.ofNullable(house).map(Length::ofFeet),
                Optional.ofNullable(line).map(Length::ofFeet),
                o.permission(),
                o.discharge(),
                o.waterLevel(),
                o.pit(),
                o.dischargeTrench());
    }

    /** 5 ft from a lot line (Warrenville IL) and 10 ft from the house (common practice, no source). */
    @ParameterizedTest(name = "{0} ft from the house, {1} ft from the line: {2}")
    @CsvSource({
        "10,   5,    ",
        "9.99, 5,    outlet-near-house",
        ",     5,    outlet-house-unmeasured",
        "10,   4.99, outlet-near-line",
        "10,   ,     outlet-line-unmeasured"
    })
    void outletKeepsItsDistance(Double house, Double line, String expected) {
        Job job = new WaterJob().build();
        Water w = job.water();
        Job moved = job.withWater(new Water(
                w.drains(),
                w.mains(),
                w.roofLines(),
                w.downspouts(),
                List.of(outlet(w.outlets().get(0), house, line)),
                w.candidates()));
        assertThat(Checked.findings(moved))
                .extracting(Finding::id)
                .filteredOn(
                        Set.of(
                                "outlet-near-house",
                                "outlet-house-unmeasured",
                                "outlet-near-line",
                                "outlet-line-unmeasured")::contains)
                .isEqualTo(expected == null ? List.of() : List.of(expected));
    }

    /** The main ends at 91.50, so water at 92.00 stands half a foot over it; a sump's basin is pumped. */
    @Test
    void stopNamesRunAndLevels() {
        assertThat(Checked.only(new WaterJob().outlet(OutletKind.DAYLIGHT, 91.75, 90.0), "outlet-below-level")
                        .values())
                .containsEntry("run", "M1")
                .containsEntry("end", "91.50 ft")
                .containsEntry("level", "91.75 ft")
                .containsEntry("below", "3 in");
        assertThat(Checked.ids(new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0)))
                .doesNotContain("outlet-water-unmeasured", "outlet-below-level", "outlet-below-water");
    }

    /** Where nothing leaves the pipes nothing is said of sewers. */
    @Test
    void sewerIsToldWhereThereIsAnOutlet() {
        Job job = new WaterJob().build();
        Water none = new Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        assertThat(Checked.findings(job.withWater(none)))
                .extracting(Finding::id)
                .doesNotContain("never-sanitary");
    }

    /** A main whose end is not known is not held against water. */
    @Test
    void unknownEndDrownsInNothing() {
        assertThat(Checked.ids(new WaterJob().main(40, 92.2, null).outlet(OutletKind.DAYLIGHT, 95.0, 95.0)))
                .doesNotContain("outlet-below-water", "outlet-below-level")
                .contains("levels-unmeasured");
    }
}
