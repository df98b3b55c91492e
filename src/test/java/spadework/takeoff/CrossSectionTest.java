// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.Jobs;
import spadework.job.Outlet;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Site;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.Water;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;

class CrossSectionTest {

    /** 29 CFR 1926 Subpart P App. B Table B-1 (T-09): the edge lies p + B + s × H from the wall. */
    @ParameterizedTest(name = "{0} ft, {1}, {2}: edge {3} ft out")
    @CsvSource(textBlock = """
            # depth to the footing's top; footing 8 by 6 in, bottom 24 in
            5.3333, B,           SLOPED,   8.5
            5.3333, A,           SLOPED,   8.5
            5.3333, C,           SLOPED,   11.5
            5.3333, NOT_CLASSED, SLOPED,   11.5
            5.3333, STABLE_ROCK, SLOPED,   8.5
            5.3333, C,           SHIELDED, 2.5
            5.3333, C,           UPRIGHT,  2.5
            """)
    void theEdgeLiesWhereTheSoilPutsIt(double depth, SoilType soil, Protection protection, double reach) {
        CrossSection section = at(depth, soil, protection);

        assertThat(section.trenchDepth().feet()).isCloseTo(6, within(0.001));
        assertThat(section.reach().feet()).isCloseTo(reach, within(0.001));
    }

    @Test
    void theDeeperEndIsCut() {
        Wall wall = Jobs.wall();
        Wall falling = new Wall(
                wall.label(),
                wall.where(),
                wall.place(),
                new WallDepth(Length.ofFeet(3), Length.ofFeet(6.5)),
                wall.footing(),
                wall.surface(),
                wall.openings(),
                wall.windowWells(),
                wall.digging());

        assertThat(of(Jobs.job(falling)).depth()).isEqualTo(Length.ofFeet(6.5));
    }

    /** The stone that is paid for is the stone that is drawn: section times length gives the takeoff's cubic yards. */
    @Test
    void theStonesSectionTimesTheWallsLengthIsTheStoneOfTheTakeoff() {
        Job job = Jobs.job();
        CrossSection section = of(job);
        CrossSection.Bed bed = section.bed().orElseThrow();

        double hs = bed.stone().feet();
        double p = section.footing().projection().feet();
        double s = section.bank().slope().number();
        double od = bed.pipeOutside().feet();
        double area = section.bottomWidth().feet() * hs
                + s * hs * hs / 2
                + p * (hs - section.footing().thickness().feet())
                - Math.PI * od * od / 4;
        double yards = Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.STONE)
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
        assertThat(area * job.walls().get(0).length().feet() / 27).isCloseTo(yards, within(0.001));
    }

    @Test
    void aWallWithoutADrainHasNoBed() {
        Water dry = new Water(List.of(), List.of(), List.of(), List.of(), List.<Outlet>of(), List.of());

        assertThat(of(Jobs.job(Jobs.site(), dry, Jobs.wall())).bed()).isEmpty();
    }

    @Test
    void withoutTheFloorsLevelTheFloorIsNotPlaced() {
        Site s = Jobs.site();
        Site unmeasured = new Site(
                s.address(),
                s.yearBuilt(),
                s.space(),
                s.house(),
                s.benchmark(),
                Optional.empty(),
                s.soil(),
                s.rain(),
                s.limits(),
                s.locateTicket(),
                s.catchment(),
                List.of());

        assertThat(of(Jobs.job(unmeasured, Jobs.water(), Jobs.wall())).floor()).isEmpty();
    }

    @Test
    void wallsThatPrintTheSameFiguresAreCutAlike() {
        CrossSection five = at(5, SoilType.B, Protection.SLOPED);

        assertThat(five.printsLike(at(5.01, SoilType.B, Protection.SLOPED))).isTrue();
        assertThat(five.printsLike(at(5.1, SoilType.B, Protection.SLOPED))).isFalse();
        assertThat(five.printsLike(at(5, SoilType.C, Protection.SLOPED))).isFalse();
        assertThat(five.printsLike(at(5, SoilType.B, Protection.SHIELDED))).isFalse();
        assertThat(five.joinedWith(five).walls()).containsExactly("A", "A");
    }

    @Test
    void otherStoneIsAnotherSection() {
        CrossSection five = at(5, SoilType.B, Protection.SLOPED);
        CrossSection.Bed bed = five.bed().orElseThrow();
        Length more = Length.ofFeet(bed.stone().feet() + 0.5);

        assertThat(five.printsLike(five.withBed(Optional.empty()))).isFalse();
        assertThat(five.printsLike(
                        five.withBed(Optional.of(new CrossSection.Bed(more, bed.bedding(), bed.pipeOutside())))))
                .isFalse();
        assertThat(five.printsLike(five.withFloor(Optional.of(Length.ofFeet(9)))))
                .isFalse();
    }

    /** A drain lies along its own walls only. */
    @Test
    void wallBesideThatOfTheDrainHasNoBed() {
        Job job =
                PlanHouse.of("40 R 20").job(SoilType.B, PlanHouse.of("40 R 20").walls(5));
        Job half = JobPipes.drainedAlong(job, List.of("W0"));
        assertThat(CrossSection.of(half, Books.standard(), half.walls().get(0)).bed())
                .isPresent();
        assertThat(CrossSection.of(half, Books.standard(), half.walls().get(1)).bed())
                .isEmpty();
    }

    private static CrossSection at(double depth, SoilType soil, Protection protection) {
        Site site = Jobs.with(Jobs.site(), new Soil(Texture.LOAM, Seepage.NONE, soil));
        return of(Jobs.job(site, Jobs.water(), Jobs.protectedBy(Jobs.deep(depth), protection)));
    }

    private static CrossSection of(Job job) {
        return CrossSection.of(job, Books.standard(), job.walls().get(0));
    }

    /**
     * The floor at 93.00, the pipe's higher invert at 92.50: the floor lies 0.50 ft over it, the pipe's wall of 0.17 in
     * and 2 in of stone under it deeper still is the footing's bottom: 0.50 + 0.0142 + 0.1667 = 0.6808 ft.
     */
    @Test
    void floorLiesOverTheFootingByThePipe() {
        assertThat(of(Jobs.job()).floor().orElseThrow().feet()).isCloseTo(0.6808, within(0.0001));
    }

    /** Where neither the ground nor an end of the pipe is known nobody can place the floor. */
    @Test
    void withoutLevelsOfPipeAndGroundTheFloorIsNotPlaced() {
        for (boolean start : new boolean[] {true, false}) {
            WaterJob job = start ? new WaterJob().drain(null, 92.2) : new WaterJob().drain(92.6, null);
            assertThat(of(job.drainGrade(null, null).build()).floor()).isEmpty();
        }
    }

    /**
     * The ground is measured at 97.50 and 97.90 and the wall from it: the footing's bottom lies at the higher one less
     * the trench's depth, whatever stone the pipe's levels leave under it.
     */
    @Test
    void floorLiesOverTheFootingByTheGroundWhereThatWasMeasured() {
        Job job = new WaterJob()
                .drain(92.6, 92.2)
                .drainGrade(97.5, 97.9)
                .floor(94.0)
                .build();
        double footing = 97.9 - job.walls().get(0).deepestTrench().feet();
        assertThat(of(job).floor().orElseThrow().feet()).isCloseTo(94.0 - footing, within(0.0001));
        Job deeper = new WaterJob()
                .drain(92.9, 92.5)
                .drainGrade(97.5, 97.9)
                .floor(94.0)
                .build();
        assertThat(of(deeper).floor()).isEqualTo(of(job).floor());
    }

    /** Cut at the deeper end: the pipe falls toward the wall's end, so at the end there is less stone under it. */
    @Test
    void stoneIsThatOfTheEndThatIsCut() {
        CrossSection.Bed atStart = bed(6, 5);
        CrossSection.Bed atEnd = bed(5, 6);
        assertThat(atStart.bedding().feet() - atEnd.bedding().feet()).isGreaterThan(0.3);
        assertThat(atStart.stone().feet()).isGreaterThan(atEnd.stone().feet());
    }

    /** Ground 1 ft higher at the deeper end keeps the footing level; the pipe falls 0.5 ft from start to end. */
    private static CrossSection.Bed bed(double start, double end) {
        Wall w = Jobs.wall();
        Wall wall = new Wall(
                w.label(),
                w.where(),
                w.place(),
                new WallDepth(Length.ofFeet(start), Length.ofFeet(end)),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
        Water water = Jobs.water();
        spadework.job.FootingDrain d = water.drains().get(0);
        double bottom = 92;
        spadework.job.FootingDrain drain = new spadework.job.FootingDrain(
                d.label(),
                d.along(),
                d.item(),
                d.teeAt(),
                d.into(),
                Optional.of(Length.ofFeet(bottom + 0.7)),
                Optional.of(Length.ofFeet(bottom + 0.2)),
                Optional.empty(),
                Optional.of(Length.ofFeet(bottom + start + 8.0 / 12)),
                Optional.of(Length.ofFeet(bottom + end + 8.0 / 12)));
        return of(Jobs.job(
                        Jobs.site(),
                        new Water(List.of(drain), water.mains(), List.of(), List.of(), water.outlets(), List.of()),
                        wall))
                .bed()
                .orElseThrow();
    }

    /** A wall with a drain and one without print differently, whatever else is alike. */
    @Test
    void bedAndFloorAreFiguresOfTheSection() {
        Water dry = new Water(List.of(), List.of(), List.of(), List.of(), List.<Outlet>of(), List.of());
        CrossSection with = of(Jobs.job());
        CrossSection without = of(Jobs.job(Jobs.site(), dry, Jobs.wall()));
        assertThat(with.printsLike(without)).isFalse();
        assertThat(with.joinedWith(without).bed()).isEqualTo(with.bed());
    }

    /**
     * A wall as deep at both ends is cut at its start: 0.7 ft less the pipe's wall of 0.17 in is under the pipe
     * there.
     */
    @Test
    void levelWallIsCutAtItsStart() {
        assertThat(bed(5, 5).bedding().feet()).isCloseTo(0.7 - 0.17 / 12, within(1e-9));
    }
}
