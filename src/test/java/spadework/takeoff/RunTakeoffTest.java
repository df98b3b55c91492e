// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.Site;
import spadework.job.SolidRun;
import spadework.job.TestPit;
import spadework.job.TrenchSize;
import spadework.job.Water;
import spadework.job.WaterJob;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;

/** Pipes away from the house and what they end in, each figure worked out by hand beside it. */
class RunTakeoffTest {
    /** Pipe of 4.215 in outside (ASTM D3034) along 40 ft: π × 0.35125² ÷ 4 × 40 ÷ 27 cy. */
    private static final double PIPE = Math.PI * 4.215 * 4.215 / 4 / 144 * 40 / 27;

    private static List<Quantity> quantities(Job job) {
        return Measuring.of(job, Books.standard()).quantities();
    }

    private static double of(Job job, Measure measure, String label) {
        return quantities(job).stream()
                .filter(quantity ->
                        quantity.measure() == measure && quantity.label().equals(label))
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    private static SolidRun run(String label, double depth, Optional<Protection> protection, int bends) {
        return new SolidRun(
                label,
                Length.ofFeet(40),
                Optional.empty(),
                new TrenchSize(Length.ofFeet(1), Length.ofFeet(depth), protection),
                bends,
                "O1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Job main(SolidRun run) {
        Water w = Jobs.water();
        return Jobs.job(
                Jobs.site(),
                new Water(List.of(), List.of(run), List.of(), List.of(), w.outlets(), List.of()),
                Jobs.wall());
    }

    /** 40 ft × 1 ft × 3 ft ÷ 27, upright under 5 ft; filled but for the pipe. */
    @Test
    void mainInItsTrench() {
        Job job = main(run("M1", 3, Optional.empty(), 2));
        assertThat(of(job, Measure.MAIN_PIPE, "M1")).isEqualTo(40);
        assertThat(of(job, Measure.MAIN_BEND, "M1")).isEqualTo(2);
        assertThat(of(job, Measure.PIPE_TRENCH, "M1")).isCloseTo(120.0 / 27, within(1e-9));
        assertThat(of(job, Measure.BACKFILL, "M1")).isCloseTo(120.0 / 27 - PIPE, within(1e-9));
        assertThat(of(job, Measure.SHIELD, "M1")).isZero();
    }

    /** 29 CFR 1926.652(a)(1): at 6 ft laid back 1 to 1 on both sides, 40 × (1 × 6 + 6²) ÷ 27, or in a box upright. */
    @Test
    void deepMainIsLaidBackOrShielded() {
        Job sloped = main(run("M1", 6, Optional.empty(), 0));
        assertThat(of(sloped, Measure.PIPE_TRENCH, "M1")).isCloseTo(40.0 * 42 / 27, within(1e-9));
        assertThat(of(sloped, Measure.SHIELD, "M1")).isZero();
        Job box = main(run("M1", 6, Optional.of(Protection.SHIELDED), 0));
        assertThat(of(box, Measure.PIPE_TRENCH, "M1")).isCloseTo(40.0 * 6 / 27, within(1e-9));
        assertThat(of(box, Measure.SHIELD, "M1")).isEqualTo(40);
    }

    /** In steps of 4 ft in clay of Type B (App. B figure B-1.2): upright so far, then 6 ft out on both sides. */
    @Test
    void deepMainInSteps() {
        Job stepped = DugTogether.clay(main(run("M1", 6, Optional.of(Protection.BENCHED), 0)));
        assertThat(of(stepped, Measure.PIPE_TRENCH, "M1")).isCloseTo(40.0 * (6 + 2 * 2 * 6) / 27, within(1e-9));
        Job shallow = DugTogether.clay(main(run("M1", 4, Optional.of(Protection.BENCHED), 0)));
        assertThat(of(shallow, Measure.PIPE_TRENCH, "M1")).isCloseTo(40.0 * 4 / 27, within(1e-9));
        DugTogether.evaluates(stepped);
    }

    /** The downspouts that run into a line are its own, and it is tested once. */
    @Test
    void roofLineCountsItsDownspouts() {
        Water w = Jobs.water();
        List<Downspout> spouts = List.of(
                new Downspout("DS1", Area.ofSquareFeet(300), "R1"),
                new Downspout("DS2", Area.ofSquareFeet(300), "R1"),
                new Downspout("DS3", Area.ofSquareFeet(300), "R2"));
        Job job = Jobs.job(
                Jobs.site(),
                new Water(
                        w.drains(),
                        w.mains(),
                        List.of(run("R1", 2, Optional.empty(), 3), run("R2", 2, Optional.empty(), 0)),
                        spouts,
                        w.outlets(),
                        List.of()),
                Jobs.wall());
        assertThat(of(job, Measure.ROOF_PIPE, "R1")).isEqualTo(40);
        assertThat(of(job, Measure.ROOF_BEND, "R1")).isEqualTo(3);
        assertThat(of(job, Measure.DOWNSPOUT, "R1")).isEqualTo(2);
        assertThat(of(job, Measure.DOWNSPOUT, "R2")).isEqualTo(1);
        assertThat(of(job, Measure.FLOW_TEST, "R1")).isEqualTo(1);
        assertThat(of(job, Measure.PIPE_TRENCH, "R1")).isCloseTo(80.0 / 27, within(1e-9));
        assertThat(quantities(job))
                .filteredOn(quantity -> quantity.label().equals("R1"))
                .allSatisfy(quantity -> assertThat(quantity.section().label()).isEqualTo("roof water"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"DAYLIGHT, DAYLIGHT_OUTLET", "APPROVED_STORM, STORM_OUTLET", "SUMP, SUMP"})
    void outletByItsKind(OutletKind kind, Measure measure) {
        Job job = new WaterJob().outlet(kind, 91.0, 90.5).build();
        for (Measure each : List.of(Measure.DAYLIGHT_OUTLET, Measure.STORM_OUTLET, Measure.SUMP)) {
            assertThat(of(job, each, "O1")).as(each.trade()).isEqualTo(each == measure ? 1 : 0);
        }
    }

    /** An outlet that takes no drain and no main belongs to the roof water. */
    @Test
    void outletOfRoofWaterAlone() {
        Job both = new WaterJob().roofLine("R1", 40, 95.0, 94.0, 98.0).build();
        assertThat(section(both)).isEqualTo("drain");
        assertThat(section(
                        new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0).build()))
                .isEqualTo("drain");
        Water w = both.water();
        Job roof =
                both.withWater(new Water(List.of(), List.of(), w.roofLines(), w.downspouts(), w.outlets(), List.of()));
        assertThat(section(roof)).isEqualTo("roof water");
    }

    /** Nor does a second outlet take a drain because the first does. */
    @Test
    void secondOutletForTheRoofAlone() {
        Job one = new WaterJob().roofLine("R1", 40, 95.0, 94.0, 98.0).build();
        Water w = one.water();
        Outlet first = w.outlets().get(0);
        Outlet second = new Outlet(
                "O2",
                first.kind(),
                first.what(),
                first.level(),
                first.fromHouse(),
                first.fromLotLine(),
                first.permission(),
                first.discharge(),
                first.waterLevel(),
                first.pit(),
                first.dischargeTrench());
        Job two = one.withWater(
                new Water(w.drains(), w.mains(), w.roofLines(), w.downspouts(), List.of(first, second), List.of()));
        assertThat(section(two)).isEqualTo("drain");
        assertThat(quantities(two))
                .filteredOn(quantity -> quantity.label().equals("O2"))
                .isNotEmpty()
                .allSatisfy(quantity -> assertThat(quantity.section().label()).isEqualTo("roof water"));
    }

    private static String section(Job job) {
        return quantities(job).stream()
                .filter(quantity -> quantity.label().equals("O1"))
                .findFirst()
                .orElseThrow()
                .section()
                .label();
    }

    /**
     * Basin of 18 × 24 in inside: a hole 18 in + 2 × 1 ft square, 24 + 4 in deep, 3.5² × 2.333 ÷ 27 = 1.0586 cy; the
     * basin stands in it as a cylinder of 2 ft, π × 1.5² ÷ 4 × 2 ÷ 27 = 0.1309 cy.
     */
    @Test
    void holeOfASump() {
        Job job = new WaterJob().sump(18.0, 24.0, 8.0, null, 25.0, 12.0).build();
        assertThat(of(job, Measure.PIPE_TRENCH, "O1 pit")).isCloseTo(1.0586, within(0.0001));
        assertThat(of(job, Measure.BACKFILL, "O1 pit")).isCloseTo(1.0586 - 0.1309, within(0.0002));
        assertThat(of(job, Measure.SUMP_DISCHARGE, "O1")).isZero();
        assertThat(of(job, Measure.PIPE_TRENCH, "O1 discharge")).isZero();
        assertThat(of(new WaterJob().build(), Measure.PIPE_TRENCH, "O1 pit")).isZero();
    }

    /** The discharge pipe of 40 ft has a trench of its own, filled but for the pipe. */
    @Test
    void dischargeOfASump() {
        Job job = new WaterJob()
                .sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0)
                .pitAt(PitPlace.INSIDE)
                .build();
        assertThat(of(job, Measure.SUMP_DISCHARGE, "O1")).isEqualTo(40);
        double dug = of(job, Measure.PIPE_TRENCH, "O1 discharge");
        double outside =
                Books.standard().get("DISCH-15").pipe().orElseThrow().outside().feet();
        assertThat(dug).isPositive();
        assertThat(of(job, Measure.BACKFILL, "O1 discharge"))
                .isCloseTo(dug - Math.PI * outside * outside / 4 * 40 / 27, within(1e-9));
    }

    /** A hole of 4 × 3 ft, 4.5 ft deep, is 54 cf: 2 cy out and 2 cy back. */
    @Test
    void testPitIsFilledWithWhatCameOut() {
        Site s = Jobs.site();
        TestPit pit = new TestPit("T1", Optional.of("A"), Length.ofFeet(4), Length.ofFeet(3), Length.ofFeet(4.5));
        Site dug = s.withTestPits(List.of(pit));
        Job job = Jobs.job(dug, Jobs.water(), Jobs.wall());
        assertThat(of(job, Measure.PIPE_TRENCH, "T1")).isCloseTo(2, within(1e-9));
        assertThat(of(job, Measure.BACKFILL, "T1")).isCloseTo(2, within(1e-9));
    }

    private static Job drain(String item, String into) {
        Water w = Jobs.water();
        FootingDrain d = w.drains().get(0);
        FootingDrain chosen = new FootingDrain(
                d.label(),
                d.along(),
                Optional.ofNullable(item),
                d.teeAt(),
                into,
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
        return Jobs.job(
                Jobs.site(),
                new Water(List.of(chosen), w.mains(), List.of(), List.of(), w.outlets(), List.of()),
                Jobs.wall());
    }

    /** A tee where the drain meets a main, an adapter where corrugated meets smooth; into an outlet neither. */
    @ParameterizedTest(name = "{0} into {1}: tee {2}, adapter {3}")
    @CsvSource({",           M1, 1, 0", "PIPE-COIL4, M1, 1, 1", "PIPE-COIL4, O1, 0, 0", ",           O1, 0, 0"})
    void teeAndAdapter(String item, String into, double tee, double adapter) {
        Job job = drain(item, into);
        assertThat(of(job, Measure.DRAIN_TEE, "D1")).isEqualTo(tee);
        assertThat(of(job, Measure.DRAIN_ADAPTER, "D1")).isEqualTo(adapter);
        assertThat(of(job, Measure.FLOW_TEST, "D1")).isEqualTo(1);
    }

    /** A coil that is longer than the drain has no joint. */
    @Test
    void coilHasNoCoupling() {
        assertThat(of(drain("PIPE-COIL4", "M1"), Measure.DRAIN_COUPLING, "D1")).isZero();
    }

    @Test
    void cleanoutsFromEachEnd() {
        Job job = new WaterJob().build();
        FootingDrain d = job.water().drains().get(0);
        assertThat(Cleanouts.fromEachEnd(job, d)).isEqualTo(1);
        Job longer = job.withWall(job.walls().get(0).withLength(Length.ofFeet(210)));
        assertThat(Cleanouts.fromEachEnd(longer, d)).isEqualTo(3);
        Job middle = new WaterJob().teeInMiddle(92.0).build();
        Job both = middle.withWall(middle.walls().get(0).withLength(Length.ofFeet(210)));
        assertThat(Cleanouts.fromEachEnd(both, both.water().drains().get(0))).isEqualTo(2);
    }

    /** A working points at the place of the job that it took its length from, and at the book that it was sized by. */
    @Test
    void workingsPointAtTheJob() {
        Job job = new WaterJob()
                .roofLine("R1", 40, 95.0, 94.0, 98.0)
                .roofLine("R2", 30, 95.0, 94.0, 98.0)
                .build();
        assertThat(source(job, Measure.MAIN_PIPE, "M1")).isEqualTo("/water/mains/0/length");
        assertThat(source(job, Measure.ROOF_PIPE, "R2")).isEqualTo("/water/roofLines/1/length");
        assertThat(source(job, Measure.DRAIN_PIPE, "D1")).isEqualTo("/walls/0/length");
        assertThat(source(job, Measure.STONE_TONS, "A")).isEqualTo("27 cf in a cubic yard");
        Quantity tons = quantities(job).stream()
                .filter(quantity -> quantity.measure() == Measure.STONE_TONS)
                .findFirst()
                .orElseThrow();
        assertThat(tons.working().inputs().get(1).source())
                .contains(Books.standard().title())
                .contains(Books.standard().dated().toString());
    }

    private static String source(Job job, Measure measure, String label) {
        return quantities(job).stream()
                .filter(quantity ->
                        quantity.measure() == measure && quantity.label().equals(label))
                .findFirst()
                .orElseThrow()
                .working()
                .inputs()
                .get(0)
                .source();
    }
}
