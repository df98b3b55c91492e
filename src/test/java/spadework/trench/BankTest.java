// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.measure.Length;

/** The bank that a trench gets: 29 CFR 1926.652(a)(1) and Subpart P App. B Table B-1. */
class BankTest {
    private static Site site(SoilType type, SiteLimit... limits) {
        Site s = Jobs.with(Jobs.site(), new Soil(Texture.LOAM, Seepage.NONE, type));
        return new Site(
                s.address(),
                s.yearBuilt(),
                s.space(),
                s.house(),
                s.benchmark(),
                s.insideFloor(),
                s.soil(),
                s.rain(),
                List.of(limits),
                s.locateTicket(),
                s.catchment(),
                s.testPits());
    }

    /** A wall with an 8 × 6 in footing and a bottom of 24 in, so deep from grade to the trench's bottom. */
    private static Wall wall(double depth, Protection kind) {
        return PlanHouse.wall("W0", 30, depth - 8.0 / 12, depth - 8.0 / 12, 24, kind);
    }

    private static SiteLimit limit(LimitKind kind, double distance, Double trunk) {
        return new SiteLimit(
                kind, "W0", Length.ofFeet(distance), Optional.ofNullable(trunk).map(Length::ofInches), "");
    }

    /** Table B-1: ¾ in Type A, 1 in Type B, 1½ in Type C; soil beside a foundation is never taken as Type A. */
    @ParameterizedTest(name = "{0}: {1} to 1")
    @CsvSource({"STABLE_ROCK, 1, 0", "A, 1, 0.75", "B, 1, 1", "C, 1.5, 1.5", "NOT_CLASSED, 1.5, 1.5"})
    void slopeFollowsTheSoil(SoilType type, double beside, double table) {
        Bank bank = Bank.of(site(type), wall(6, Protection.SLOPED));
        assertThat(bank.protection()).isEqualTo(Protection.SLOPED);
        assertThat(bank.slope().number()).isEqualTo(beside);
        assertThat(bank.inTheWay()).isEmpty();
        assertThat(Bank.of(type).slope().number()).isEqualTo(beside);
        assertThat(SlopeTable.run(type)).isEqualTo(table);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"SHIELDED", "UPRIGHT"})
    void bankThatIsNotSlopedStandsUpright(Protection kind) {
        Bank bank = Bank.of(site(SoilType.B, limit(LimitKind.PROPERTY_LINE, 3, null)), wall(6, kind));
        assertThat(bank.protection()).isEqualTo(kind);
        assertThat(bank.slope().number()).isZero();
        assertThat(bank.soil()).isEqualTo(SoilType.B);
        assertThat(bank.inTheWay()).isEmpty();
        assertThat(bank.slope().source()).contains(kind.name().toLowerCase(java.util.Locale.ROOT));
    }

    /** 29 CFR 1926.652(a)(1)(i): 5 ft and deeper. A depth that comes of levels may be off by a hair. */
    @ParameterizedTest(name = "{0} ft: {1}")
    @CsvSource({"4.99, false", "4.99999999, true", "5, true", "5.01, true"})
    void protectedFromFiveFeet(double depth, boolean expected) {
        assertThat(Bank.isProtectedAt(depth)).isEqualTo(expected);
    }

    /** p 0.5 + B 2 + s 1 × 6 ft: the edge lies 8.5 ft out. What stands nearer leaves no room. */
    @ParameterizedTest(name = "limit at {0} ft before {1} ft of depth: {2}")
    @CsvSource({
        "8.51, 6, SLOPED",
        "8.5, 6, SLOPED",
        "8.49, 6, SHIELDED",
        "7.5, 5, SLOPED",
        "7.49, 5, SHIELDED",
        "7.4, 4.9, SLOPED",
        "7.39, 4.9, UPRIGHT"
    })
    void slopeThatDoesNotFitIsShieldedOrUnderFiveFeetUpright(double distance, double depth, Protection expected) {
        SiteLimit line = limit(LimitKind.PROPERTY_LINE, distance, null);
        Bank bank = Bank.of(site(SoilType.B, line), wall(depth, Protection.SLOPED));
        assertThat(bank.protection()).isEqualTo(expected);
        assertThat(bank.inTheWay().isPresent()).isEqualTo(expected != Protection.SLOPED);
        assertThat(bank.slope().number()).isEqualTo(expected == Protection.SLOPED ? 1 : 0);
    }

    /** Of several limits the nearest is told. */
    @Test
    void nearestLimitIsInTheWay() {
        SiteLimit far = limit(LimitKind.PROPERTY_LINE, 6, null);
        SiteLimit near = limit(LimitKind.PROPERTY_LINE, 4, null);
        assertThat(Bank.of(site(SoilType.B, far, near), wall(6, Protection.SLOPED))
                        .inTheWay())
                .contains(near);
    }

    /** What stands beside another wall is in nobody's way here. */
    @Test
    void limitOfAnotherWallLeavesTheBankAlone() {
        SiteLimit elsewhere = new SiteLimit(LimitKind.PROPERTY_LINE, "W1", Length.ofFeet(3), Optional.empty(), "");
        Bank bank = Bank.of(site(SoilType.B, elsewhere), wall(6, Protection.SLOPED));
        assertThat(bank.protection()).isEqualTo(Protection.SLOPED);
        assertThat(bank.inTheWay()).isEmpty();
    }

    /** Vancouver WA 20.170.100: 1 ft of root zone for each inch of trunk; 10 in at 18.5 ft leave 8.5 ft. */
    @ParameterizedTest(name = "tree at {0} ft, trunk {1} in: {2}")
    @CsvSource({
        "18.51, 10, SLOPED",
        "18.49, 10, SHIELDED",
        "10, 10, SLOPED",
        "9, 10, SLOPED",
        "10.01, 10, SHIELDED",
        "9, , SLOPED"
    })
    void treeKeepsItsRootZone(double distance, Double trunk, Protection expected) {
        SiteLimit tree = limit(LimitKind.TREE, distance, trunk);
        assertThat(Bank.of(site(SoilType.B, tree), wall(6, Protection.SLOPED)).protection())
                .isEqualTo(expected);
    }

    /** The slope at 6 ft in Type B reaches 8.5 ft and would take the ground from under a line that lies nearer. */
    @ParameterizedTest(name = "line at {0} ft: {1}")
    @CsvSource({"3, SHIELDED", "8.49, SHIELDED", "8.5, SLOPED"})
    void utilityKeepsItsGround(double distance, Protection expected) {
        SiteLimit gas = limit(LimitKind.UTILITY, distance, null);
        assertThat(Bank.of(site(SoilType.B, gas), wall(6, Protection.SLOPED)).protection())
                .isEqualTo(expected);
    }

    /** p + B + s × H: 0.5 + 2 + 1 × 6 = 8.5 ft; upright 2.5 ft. */
    @Test
    void reachOfABank() {
        Wall six = wall(6, Protection.SLOPED);
        assertThat(Bank.of(site(SoilType.B), six).reach(six).feet()).isCloseTo(8.5, within(1e-9));
        assertThat(Bank.ofRun(0).reach(six).feet()).isCloseTo(2.5, within(1e-9));
        assertThat(Bank.reach(six, 1.5).feet()).isCloseTo(11.5, within(1e-9));
    }

    @Test
    void bankThatSomebodyLaysBackOnHisOwn() {
        assertThat(Bank.ofRun(0).protection()).isEqualTo(Protection.UPRIGHT);
        assertThat(Bank.ofRun(0.8).protection()).isEqualTo(Protection.SLOPED);
        assertThat(Bank.ofRun(0.8).slope().number()).isEqualTo(0.8);
        assertThat(Bank.ofRun(0.8).soil()).isEqualTo(SoilType.NOT_CLASSED);
    }

    /** R-01 1 ft an inch, R-02 1.25, R-03 1.5; the girth over π is the diameter. */
    @Test
    void rootZones() {
        Length ten = Length.ofInches(10);
        assertThat(RootZone.VANCOUVER.radius(ten).feet()).isCloseTo(10, within(1e-9));
        assertThat(RootZone.NORTH_CAROLINA.radius(ten).feet()).isCloseTo(12.5, within(1e-9));
        assertThat(RootZone.EDINA.radius(ten).feet()).isCloseTo(15, within(1e-9));
        assertThat(RootZone.EDINA.trunk(Length.ofFeet(15)).inches()).isCloseTo(10, within(1e-9));
        assertThat(RootZone.least(ten).feet()).isCloseTo(10, within(1e-9));
        assertThat(RootZone.most(ten).feet()).isCloseTo(15, within(1e-9));
        assertThat(RootZone.diameter(Length.ofFeet(Math.PI)).feet()).isCloseTo(1, within(1e-9));
        for (RootZone zone : RootZone.values()) {
            assertThat(zone.id()).matches("R-0[1-3]");
            assertThat(zone.source()).isNotBlank();
            assertThat(zone.feetPerInch()).isBetween(1.0, 1.5);
        }
    }

    /**
     * Figures B-1.2 and B-1.3 (T-27, from memory): steps in cohesive soil of Type B, none in Type C; seeping water
     * makes Type C (App. A (b), T-05). What nobody knows is no soil for steps.
     */
    @ParameterizedTest(name = "{0} {1} {2}: {3}")
    @CsvSource({
        "B, CLAY, NONE, ",
        "A, SILTY_CLAY, DAMP, ",
        "B, SANDY_CLAY_LOAM, NONE, ",
        "C, CLAY, NONE, TYPE",
        "NOT_CLASSED, CLAY, NONE, TYPE",
        "B, SANDY_LOAM, NONE, TEXTURE",
        "B, FILL, NONE, TEXTURE",
        "B, UNKNOWN, NONE, TEXTURE",
        "B, CLAY, FREE, WATER",
        "B, CLAY, UNKNOWN, WATER"
    })
    void soilForSteps(SoilType type, Texture texture, Seepage seepage, Benching.Against against) {
        Soil soil = new Soil(texture, seepage, type);
        assertThat(Benching.against(soil)).isEqualTo(Optional.ofNullable(against));
        Bank bank = Bank.of(Jobs.with(Jobs.site(), soil), wall(6, Protection.BENCHED));
        assertThat(bank.protection()).isEqualTo(against == null ? Protection.BENCHED : Protection.SLOPED);
        assertThat(bank.slope().number()).isEqualTo(SlopeTable.run(Bank.soil(type)));
    }

    /** What is told of a bank names the table or the figure that it follows, and its line runs as that one draws it. */
    @Test
    void stepsAndSlopesNameTheirSource() {
        Soil clay = new Soil(Texture.CLAY, Seepage.NONE, SoilType.B);
        Bank steps = Bank.cutBack(clay, Protection.BENCHED);
        Bank slope = Bank.cutBack(clay, Protection.SLOPED);
        assertThat(steps.slope().source()).isEqualTo(Benching.SOURCE);
        assertThat(slope.slope().source()).isEqualTo(SlopeTable.SOURCE).isNotEqualTo(Benching.SOURCE);
        assertThat(steps.line(Length.ofFeet(9)).out(5)).isCloseTo(8, within(1e-9));
        assertThat(slope.line(Length.ofFeet(9)).out(5)).isCloseTo(5, within(1e-9));
        assertThat(steps.line(Length.ofFeet(9)).isBenched()).isTrue();
        assertThat(slope.line(Length.ofFeet(9)).isBenched()).isFalse();
    }

    /** Up to one step of 4 ft the bank stands upright; the edge of steps is that of the slope. */
    @ParameterizedTest(name = "{0} ft deep: {1}, {2} ft from the wall")
    @CsvSource({"3.9, UPRIGHT, 2.5", "4, UPRIGHT, 2.5", "4.1, BENCHED, 6.6", "9, BENCHED, 11.5"})
    void stepsBeginOverFourFeet(double depth, Protection expected, double reach) {
        Site clay = Jobs.with(Jobs.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.B));
        Bank bank = Bank.of(clay, wall(depth, Protection.BENCHED));
        assertThat(bank.protection()).isEqualTo(expected);
        assertThat(bank.reach(wall(depth, Protection.BENCHED)).feet()).isCloseTo(reach, within(1e-9));
    }

    @ParameterizedTest(name = "limit at {0} ft: {1}")
    @CsvSource({"8.5, BENCHED", "8.49, SHIELDED"})
    void stepsNeedTheRoomOfTheSlope(double distance, Protection expected) {
        Site clay = Jobs.with(
                site(SoilType.B, limit(LimitKind.PROPERTY_LINE, distance, null)),
                new Soil(Texture.CLAY, Seepage.NONE, SoilType.B));
        assertThat(Bank.of(clay, wall(6, Protection.BENCHED)).protection()).isEqualTo(expected);
    }
}
