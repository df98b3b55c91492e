// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.Access;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Digging;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.Protection;
import spadework.job.Side;
import spadework.job.SiteLimit;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.job.WallPlace;
import spadework.job.Water;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;

/** What a job is measured to: each figure figured by hand beside it. */
class MeasuringTest {

    private static double of(Job job, Measure measure, String prefix) {
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity ->
                        quantity.measure() == measure && quantity.id().startsWith(prefix + "."))
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    /** Wall 40 ft, 5 ft to the footing's top, footing 8 × 6 in, bottom 24 in, slope 1, 4 in pipe of 4.215 in. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            # 0.5·5 + 2·5.667 + 5.667²/2 = 29.889 sf; × 40 ÷ 27, and two open ends of 3.729
            DUG,           51.738, 0.005
            # 40 × (5 + 0.5)
            CLEAN,         220,   1e-9
            # 40 × (5 + 4/12)
            COAT,          213.33, 0.005
            # hs 1.167: 2·1.167 + 1.167²/2 + 0.5·0.5 − π·0.35125²/4 = 3.1670 sf; × 40 ÷ 27
            STONE,         4.692, 0.0005
            # 4.692 × 1.40
            STONE_TONS,    6.569, 0.0005
            # (40 + 1 lap) × (0.5 + 2 + 1.167 + 1) ÷ 9
            FABRIC,        21.26, 0.005
            # dug − stone − pipe 0.0969 sf × 40 ÷ 27
            BACKFILL,      46.90, 0.01
            WALL_FOOT,     40,    1e-9
            """)
    void oneStraightWall(Measure measure, double expected, double tolerance) {
        assertThat(of(Jobs.job(), measure, "A")).isCloseTo(expected, within(tolerance));
    }

    @Test
    void handAndMachineShareTheDigging() {
        Digging quarter = new Digging(Access.MACHINE, Percent.of("25"), Length.ofInches(24), Protection.SLOPED);
        Job job = Jobs.job(Jobs.with(Jobs.wall(), quarter));
        double dug = of(job, Measure.DUG, "A");
        assertThat(of(job, Measure.DIG_HAND, "A")).isCloseTo(dug / 4, within(1e-9));
        assertThat(of(job, Measure.DIG_MACHINE, "A")).isCloseTo(dug * 3 / 4, within(1e-9));
        Digging hand = new Digging(Access.HAND, Percent.ZERO, Length.ofInches(24), Protection.SLOPED);
        Job byHand = Jobs.job(Jobs.with(Jobs.wall(), hand));
        assertThat(of(byHand, Measure.DIG_HAND, "A")).isCloseTo(dug, within(1e-9));
        assertThat(of(byHand, Measure.DIG_MACHINE, "A")).isZero();
    }

    /** The pipe's footing: a thin footing lets the pipe's cover govern: 2 + 4.215 + 6 = 12.215 in, over 5 + 6 = 11. */
    @ParameterizedTest(name = "footing {0} in thick: stone {1} in high")
    @CsvSource({"8, 14", "6.215, 12.215", "5, 12.215"})
    void stoneHeightIsGovernedByFootingOrByPipe(double thickness, double height) {
        Wall w = Jobs.wall();
        Wall wall = new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                new spadework.job.Footing(Length.ofInches(thickness), Length.ofInches(6)),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
        Job job = Jobs.job(wall);
        StoneProfile stone = StoneProfile.of(
                        job, Books.standard(), job.water().drains().get(0))
                .get(wall.label());
        double highest = stone.stations().stream()
                .mapToDouble(StoneStation::height)
                .max()
                .orElseThrow();
        assertThat(highest * 12).isCloseTo(height, within(0.001));
    }

    /** Two walls, 40 and 20 ft: the pipe's center line lies 1.5 ft out on both, so the corner adds or takes 3 ft. */
    @ParameterizedTest(name = "{0} corner: {1} ft of pipe, {2} bend")
    @CsvSource({"OUTSIDE, 63, 1", "INSIDE, 57, 1"})
    void pipeAtACorner(CornerKind kind, double feet, double bends) {
        Job job = cornered(kind);
        assertThat(of(job, Measure.DRAIN_PIPE, "D1")).isCloseTo(feet, within(1e-9));
        assertThat(of(job, Measure.DRAIN_BEND, "D1")).isEqualTo(bends);
    }

    @Test
    void aCornerIsDugOnceAndCountedWithItsFirstWall() {
        double straight = of(Jobs.job(walls()), Measure.DUG, "A") + of(Jobs.job(walls()), Measure.DUG, "B");
        double outside =
                of(cornered(CornerKind.OUTSIDE), Measure.DUG, "A") + of(cornered(CornerKind.OUTSIDE), Measure.DUG, "B");
        double inside =
                of(cornered(CornerKind.INSIDE), Measure.DUG, "A") + of(cornered(CornerKind.INSIDE), Measure.DUG, "B");
        // (2.5² H + 2.5 H² + H³/3 − 0.25 × 0.667) ÷ 27 at H = 5.667
        double h = 17.0 / 3;
        double corner = (6.25 * h + 2.5 * h * h + h * h * h / 3 - 0.25 * 2 / 3) / 27;
        // of four open ends two are left: B H² ÷ 2 + H³ ÷ 3 + 0.5 × (H² − tf²) ÷ 2 each
        double ends = 2 * (h * h + h * h * h / 3 + (h * h - 4.0 / 9) / 4) / 27;
        assertThat(outside - (straight - ends)).isCloseTo(corner, within(1e-9));
        assertThat(straight - ends - inside).isCloseTo(corner, within(1e-9));
    }

    /** Cleanouts at high ends and at least every 100 ft; couplings at the joints of 10 ft sticks. */
    @ParameterizedTest(name = "{0} ft, tee at {1}: {2} cleanouts, {3} couplings")
    @CsvSource(textBlock = """
            40,  END,    1, 3
            100, END,    1, 9
            101, END,    2, 10
            40,  MIDDLE, 2, 3
            201, MIDDLE, 4, 20
            """)
    void fittingsAreCounted(double length, TeeAt tee, double cleanouts, double couplings) {
        Wall wall = Jobs.wall().withLength(Length.ofFeet(length));
        Water w = Jobs.water();
        FootingDrain d = w.drains().get(0);
        FootingDrain drain = new FootingDrain(
                d.label(),
                d.along(),
                d.item(),
                tee,
                d.into(),
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
        Job job = Jobs.job(
                Jobs.site(), new Water(List.of(drain), w.mains(), List.of(), List.of(), w.outlets(), List.of()), wall);
        assertThat(of(job, Measure.CLEANOUT, "D1")).isEqualTo(cleanouts);
        assertThat(of(job, Measure.DRAIN_COUPLING, "D1")).isEqualTo(couplings);
    }

    /** Loam shrinks 10%: a fill of nearly what was dug takes more than was dug, so soil is brought in. */
    @Test
    void missingSoilIsImportedAndNeverHauled() {
        Job job = Jobs.job();
        assertThat(of(job, Measure.IMPORT, "whole-job")).isPositive();
        assertThat(of(job, Measure.HAUL, "whole-job")).isZero();
        double dug = of(job, Measure.DUG, "A") + of(job, Measure.PIPE_TRENCH, "M1");
        double filled = of(job, Measure.BACKFILL, "A") + of(job, Measure.BACKFILL, "M1") + 2.5 * 40 / 27;
        assertThat(of(job, Measure.IMPORT, "whole-job")).isCloseTo(filled / 0.9 - dug, within(1e-9));
    }

    /** Where the lawful slope does not fit, takeoff and price follow the shield. */
    @Test
    void aShieldTakesTheSlopesPlaceWhereThereIsNoRoom() {
        SiteLimit line = new SiteLimit(LimitKind.PROPERTY_LINE, "A", Length.ofFeet(6), Optional.empty(), "");
        Job job = Jobs.job(Jobs.with(Jobs.site(), line), Jobs.water(), Jobs.wall());
        assertThat(of(job, Measure.SHIELD, "A")).isEqualTo(40);
        // 0.5·5 + 2·5.667 = 13.833 sf
        assertThat(of(job, Measure.DUG, "A")).isCloseTo(13.8333 * 40 / 27, within(0.001));
        assertThat(of(Jobs.job(), Measure.SHIELD, "A")).isZero();
    }

    /** Sticks of 10 ft, 5% waste once: 40 ft take 42 ft, so 5 sticks. */
    @Test
    void wasteOnceThenWholePackages() {
        Purchase pipe = Measuring.of(Jobs.job(), Books.standard()).purchases().stream()
                .filter(purchase -> purchase.code().equals("PIPE-PERF4"))
                .findFirst()
                .orElseThrow();
        assertThat(pipe.net().doubleValue()).isEqualTo(40);
        assertThat(pipe.packages().intValue()).isEqualTo(5);
    }

    private static Wall[] walls() {
        Wall w = Jobs.wall();
        Wall second = new Wall(
                "B",
                "side",
                new WallPlace(Side.EAST, w.from(), Length.ofFeet(20)),
                w.depth(),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
        return new Wall[] {w, second};
    }

    private static Job cornered(CornerKind kind) {
        Water w = Jobs.water();
        FootingDrain d = w.drains().get(0);
        FootingDrain drain = new FootingDrain(
                d.label(),
                List.of("A", "B"),
                d.item(),
                d.teeAt(),
                d.into(),
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
        Job job = Jobs.job(
                Jobs.site(),
                new Water(List.of(drain), w.mains(), List.of(), List.of(), w.outlets(), List.of()),
                walls());
        return Jobs.withCorners(job, List.of(new Corner(new WallEnd("A", true), new WallEnd("B", false), kind)));
    }
}
