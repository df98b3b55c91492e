// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Side;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.job.WallPlace;
import spadework.measure.Length;
import spadework.trench.Bank;

/** What a trench asks for by its depth and its bank: 29 CFR 1926.651 and .652, on both sides of each threshold. */
class TrenchDutiesTest {

    private static List<Finding> at(double depth, Bank bank) {
        return TrenchDuties.at("T1", Length.ofFeet(depth), bank);
    }

    /**
     * Protection from 5 ft, by an engineer over 20 ft (1926.652(a)(1), (b)); soil that nobody classed is dug for Type
     * C, 1½ to 1 (Table B-1).
     */
    @ParameterizedTest(name = "{0} ft deep, {1} to 1: {2} {3}")
    @CsvSource({
        "4.99,  0,    upright-shallow,  MUST",
        "5,     0,    upright-too-deep, STOP",
        "4.99,  1.5,  slope-shallow,    ADVISE",
        "5,     1.5,  slope-back,       MUST",
        "5,     1.49, bank-too-steep,   STOP",
        "4.99,  1.49, bank-too-steep,   MUST",
        "20,    1.5,  slope-back,       MUST",
        "20.01, 1.5,  trench-over-20,   STOP",
        "20.01, 0,    trench-over-20,   STOP"
    })
    void protectionByDepthAndBank(double depth, double run, String id, Severity severity) {
        Finding first = at(depth, Bank.ofRun(run)).get(0);
        assertThat(first.id()).isEqualTo(id);
        assertThat(first.severity()).isEqualTo(severity);
        assertThat(first.about()).isEqualTo("T1");
        assertThat(first.values()).containsEntry("at", "trench T1");
    }

    /** Type B is laid back 1 to 1; a trench box stands instead of a slope, shallow or deep. */
    @Test
    void classedAndShielded() {
        assertThat(at(6, Bank.of(SoilType.B)).get(0))
                .isEqualTo(new Finding(
                        "slope-back",
                        Severity.MUST,
                        "T1",
                        java.util.Map.of("at", "trench T1", "depth", "6 ft", "run", "1", "out", "6 ft"),
                        "29 CFR 1926 Subpart P App. B Table B-1"));
        Bank shield = new Bank(Protection.SHIELDED, Bank.ofRun(0).slope(), SoilType.C, java.util.Optional.empty());
        for (double depth : new double[] {4, 5, 12}) {
            assertThat(at(depth, shield).get(0).id()).isEqualTo("shield");
        }
        assertThat(at(20.5, shield).get(0).id()).isEqualTo("trench-over-20");
    }

    /** 1926.651(c)(2): a way out from 4 ft; (g)(1): the air is tested where it is deeper than 4 ft. */
    @ParameterizedTest(name = "{0} ft deep: ladder {1}, air {2}")
    @CsvSource({"3.99, false, false", "4, true, false", "4.01, true, true"})
    void ladderAndAir(double depth, boolean ladder, boolean air) {
        List<Finding> found = at(depth, Bank.ofRun(1.5));
        assertThat(found.stream()
                        .anyMatch(f -> f.id().equals("ladder")
                                && f.severity() == Severity.MUST
                                && f.values().get("within").equals("25 ft")
                                && f.values().get("above").equals("3 ft")))
                .isEqualTo(ladder);
        assertThat(found.stream().anyMatch(f -> f.id().equals("air-test") && f.severity() == Severity.ADVISE))
                .isEqualTo(air);
    }

    /** 1½ to 1 over 6 ft lays the edge back 9 ft. */
    @Test
    void figuresOfASlope() {
        assertThat(at(6, Bank.ofRun(1.5)).get(0).values())
                .containsEntry("run", "1.5")
                .containsEntry("out", "9 ft")
                .containsEntry("depth", "6 ft");
        assertThat(at(6, Bank.ofRun(0.75)).get(0).values())
                .containsEntry("run", "0.75")
                .containsEntry("lawful", "1.5")
                .doesNotContainKey("out");
    }

    @ParameterizedTest
    @CsvSource({"1.5, 1.5", "1, 1", "0.75, 0.75", "0.333, 0.33", "10, 10"})
    void runIsPrintedShort(double run, String text) {
        assertThat(TrenchDuties.tidy(run)).isEqualTo(text);
    }

    /** 1926.651(i), (j)(2), (k)(1), and the state's own plan. */
    @Test
    void everyTrenchAsks() {
        assertThat(TrenchDuties.everywhere("OH"))
                .extracting(Finding::id, Finding::severity, Finding::about)
                .containsExactly(
                        tuple("spoil-back", Severity.MUST, ""),
                        tuple("daily-inspection", Severity.MUST, ""),
                        tuple("not-below-footing", Severity.MUST, ""),
                        tuple("state-plan", Severity.ADVISE, "OH"));
    }

    private static Wall second(Wall wall) {
        return new Wall(
                "B",
                "side wall",
                new WallPlace(Side.EAST, wall.from(), wall.length()),
                wall.depth(),
                wall.footing(),
                wall.surface(),
                wall.openings(),
                wall.windowWells(),
                wall.digging());
    }

    private static List<Finding> found(Seepage seepage, Wall... walls) {
        Job job = Jobs.job(Jobs.with(Jobs.site(), new Soil(Texture.LOAM, seepage, SoilType.B)), Jobs.water(), walls);
        return Checked.findings(job);
    }

    private static List<Finding> named(List<Finding> found, String id) {
        return found.stream().filter(f -> f.id().equals(id)).toList();
    }

    /** What is said in the same words is said once, with the depths from the least to the greatest. */
    @Test
    void sameDutyOfSeveralWallsIsOneFinding() {
        List<Finding> found = named(found(Seepage.NONE, Jobs.deep(5), second(Jobs.deep(6))), "slope-back");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).about()).isEqualTo("A, B");
        assertThat(found.get(0).values())
                .containsEntry("at", "walls A and B")
                .containsEntry("depth", "5 ft 8 in to 6 ft 8 in")
                .containsEntry("out", "5 ft 8 in to 6 ft 8 in");
    }

    /** A stop stays by itself, so that nobody sees one for two. */
    @Test
    void eachStopIsAFindingOfItsOwn() {
        Wall upright = Jobs.protectedBy(Jobs.deep(6), Protection.UPRIGHT);
        assertThat(named(found(Seepage.NONE, upright, second(upright)), "upright-too-deep"))
                .extracting(Finding::about)
                .containsExactly("A", "B");
    }

    /** 1926.652(a)(1)(ii): an upright bank stands only where nothing shows that it could fall. */
    @Test
    void seepingSoilShowsACaveIn() {
        Wall upright = Jobs.protectedBy(Jobs.deep(3), Protection.UPRIGHT);
        assertThat(named(found(Seepage.FREE, upright), "upright-seeping")).hasSize(1);
        assertThat(named(found(Seepage.FREE, upright), "upright-shallow"))
                .noneMatch(f -> f.about().contains("A"));
        assertThat(named(found(Seepage.NONE, upright), "upright-seeping")).isEmpty();
    }
}
