// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.ground.DigBodies;
import spadework.ground.Overlap;
import spadework.ground.Slice;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Opening;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.job.SolidRun;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricebook.Books;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/** Soil of trenches and holes, worked out by hand. */
class DugWallTest {

    private static double dug(Wall wall) {
        Job job = Jobs.job(wall);
        return DugWall.bank(new Trenches(job, Books.standard()), wall).number();
    }

    private static Wall wells(Protection protection, int wells) {
        Wall w = Jobs.protectedBy(Jobs.wall(), protection);
        Opening window = new Opening("window", 2, Length.ofFeet(3), Length.ofFeet(1));
        return new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                w.footing(),
                w.surface(),
                List.of(window),
                wells,
                w.digging());
    }

    /**
     * A well of 4 ft reaches 3 ft out and 3 ft down (common practice, no source). Before an upright bank 2.5 ft out
     * each takes 4 × 0.5 × 3 = 6 cf more; before a bank laid back 1 to 1, 5.2 ft out at that depth, nothing.
     */
    @ParameterizedTest(name = "{1} wells before a bank {0}: {2} cf more")
    @CsvSource({"UPRIGHT, 1, 6", "UPRIGHT, 2, 12", "UPRIGHT, 0, 0", "SLOPED, 2, 0"})
    void windowWellsBeyondTheTrench(Protection protection, int wells, double cubicFeet) {
        double without = dug(wells(protection, 0));
        assertThat((dug(wells(protection, wells)) - without) * 27).isCloseTo(cubicFeet, within(1e-9));
        assertThat(formula(wells(protection, wells)).contains("Vw")).isEqualTo(cubicFeet > 0);
    }

    private static String formula(Wall wall) {
        return DugWall.bank(new Trenches(Jobs.job(wall), Books.standard()), wall)
                .formula();
    }

    /** What lies straight before the wall, as the machine digs it with care, holds the same wells. */
    @ParameterizedTest(name = "{1} wells before a bank {0}: {2} cf more")
    @CsvSource({"UPRIGHT, 1, 6", "UPRIGHT, 2, 12", "UPRIGHT, 0, 0", "SLOPED, 2, 0"})
    void windowWellsStraightBeforeTheWall(Protection protection, int wells, double cubicFeet) {
        Worked without = beside(wells(protection, 0));
        Worked with = beside(wells(protection, wells));
        assertThat((with.number() - without.number()) * 27).isCloseTo(cubicFeet, within(1e-9));
        assertThat(with.formula().contains("Vw")).isEqualTo(cubicFeet > 0);
        assertThat(without.formula()).doesNotContain("Vw");
    }

    private static Worked beside(Wall wall) {
        return DugWall.beside(new Trenches(Jobs.job(wall), Books.standard()), wall);
    }

    /** The working says which end a face belongs to. */
    @Test
    void facesAreToldByTheirEnd() {
        assertThat(DugWall.bank(new Trenches(Jobs.job(), Books.standard()), Jobs.wall())
                        .inputs())
                .extracting(Working::name)
                .containsExactly("straight trench", "sloped face at the start", "sloped face at the end");
    }

    /** A bank that stands upright is not laid back at its ends either; one that is laid back has two. */
    @Test
    void onlyWhatIsDugIsInTheFormula() {
        assertThat(formula(Jobs.protectedBy(Jobs.wall(), Protection.UPRIGHT))).isEqualTo("V ÷ 27");
        assertThat(formula(Jobs.wall())).isEqualTo("(V + E1 + E2) ÷ 27");
    }

    private static SolidRun main(double start, double end) {
        double bedding = 2.0 / 12;
        return new SolidRun(
                "M1",
                Length.ofFeet(40),
                Optional.empty(),
                new TrenchSize(Length.ofFeet(1), Length.ofFeet(3)),
                0,
                "O1",
                Optional.of(Length.ofFeet(100 - start + bedding)),
                Optional.of(Length.ofFeet(100 - end + bedding)),
                Optional.of(Length.ofFeet(100)),
                Optional.of(Length.ofFeet(100)),
                Optional.empty());
    }

    /**
     * 40 ft, 1 ft wide. From 2 to 4 ft deep upright: 40 × 3 ÷ 27. From 6 to 8 ft laid back 1 to 1 on both sides the
     * sections are 42, 56 and 72 sf: 40 ÷ 6 × (42 + 4 × 56 + 72) ÷ 27 = 83.457.
     */
    @ParameterizedTest(name = "{0} to {1} ft deep: {2} cy")
    @CsvSource({"2, 4, 4.4444", "6, 8, 83.4568", "8, 6, 83.4568", "6, 6, 62.2222"})
    void pipeTrenchWhoseDepthChanges(double start, double end, double cubicYards) {
        Worked dug = BodyDug.of("T", "pipe trench, bank", DigBodies.main(Jobs.job(), main(start, end)));
        assertThat(dug.number()).isCloseTo(cubicYards, within(0.0001));
        assertThat(dug.formula()).isEqualTo("T1 ÷ 27");
    }

    /** From 4 to 6 ft only the half that is 5 ft and deeper is laid back (29 CFR 1926.652(a)(1)): two pieces. */
    @Test
    void pipeTrenchIsLaidBackWhereItHasToBe() {
        Worked dug = BodyDug.of("T", "pipe trench, bank", DigBodies.main(Jobs.job(), main(4, 6)));
        double upright = 20 * 4.5;
        double sloped = 20.0 / 6 * (5 + 25 + 4 * (5.5 + 30.25) + 6 + 36);
        assertThat(dug.number()).isCloseTo((upright + sloped) / 27, within(1e-9));
        assertThat(dug.formula()).isEqualTo("(T1 + T2) ÷ 27");
    }

    /** The working says how well its depth is known. */
    @Test
    void sourceOfTheDepth() {
        SolidRun typed = Jobs.main(40, 92.2, 91.4);
        assertThat(BodyDug.source(DigBodies.main(Jobs.job(), main(2, 4)))).isEqualTo("depth as measured");
        assertThat(BodyDug.source(DigBodies.main(Jobs.job(), typed))).startsWith("typed depth");
        Job sump = new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0).build();
        assertThat(BodyDug.source(
                        DigBodies.discharge(sump, sump.water().outlets().get(0)).orElseThrow()))
                .startsWith("usual depth");
        assertThat(BodyDug.of("T", "pipe trench, bank", DigBodies.main(Jobs.job(), typed))
                        .name())
                .startsWith("pipe trench, bank, typed depth");
    }

    private static DugWall.Term term(boolean adds, String symbol, double cubicFeet) {
        return new DugWall.Term(adds, Worked.of(symbol, symbol, cubicFeet, Unit.CUBIC_FOOT, new Formula("x", "test")));
    }

    @Test
    void termsAddOrTakeAway() {
        Worked one = DugWall.sum("D", "soil", List.of(term(true, "V", 54)));
        assertThat(one.formula()).isEqualTo("V ÷ 27");
        assertThat(one.number()).isEqualTo(2);
        Worked three =
                DugWall.sum("D", "soil", List.of(term(true, "V", 54), term(false, "C1", 81), term(true, "E1", 27)));
        assertThat(three.formula()).isEqualTo("(V − C1 + E1) ÷ 27");
        assertThat(three.number()).isEqualTo(0);
    }

    /** Up to a dozen slices are listed one by one, of more how many they are. */
    @ParameterizedTest(name = "{0} slices: {1} inputs")
    @CsvSource({"1, 1", "12, 12", "13, 1"})
    void sharedSlices(int slices, int inputs) {
        Overlap overlap = new Overlap(List.of("A", "B"), "A", Collections.nCopies(slices, new Slice(0, 1, -1, -2)));
        List<DugWall.Term> terms = DugWall.shared("U", List.of(overlap, overlap));
        assertThat(terms).hasSize(2);
        assertThat(terms.get(1).volume().symbol()).isEqualTo("U2");
        assertThat(terms.get(0).adds()).isTrue();
        Worked shared = terms.get(0).volume();
        assertThat(shared.number()).isCloseTo(-1.5 * slices, within(1e-9));
        assertThat(shared.inputs()).hasSize(inputs);
        assertThat(shared.formula()).isEqualTo(slices == 13 ? "z" : slices == 1 ? "z1" : shared.formula());
        assertThat(shared.name()).contains("A, B");
    }

    /** A corner that stands twice in the job is pointed at where it stands first. */
    @Test
    void cornersAndTheirPlaces() {
        PlanHouse house = PlanHouse.of("40 R 20 L 30");
        Job job = house.job(SoilType.B, house.walls(5));
        Trenches trenches = new Trenches(job, Books.standard());
        assertThat(trenches.pointer(job.corners().get(1))).isEqualTo("/corners/1");
        assertThat(trenches.cornersOf(job.walls().get(1)))
                .containsExactly(job.corners().get(1));
        assertThat(trenches.cornersOf(job.walls().get(2))).isEmpty();
        Corner first = job.corners().get(0);
        Job twice = Jobs.withCorners(job, List.of(first, job.corners().get(1), first));
        assertThat(new Trenches(twice, Books.standard()).pointer(first)).isEqualTo("/corners/0");
        assertThat(first).isEqualTo(new Corner(new WallEnd("W0", true), new WallEnd("W1", false), CornerKind.OUTSIDE));
    }
}
