// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Backfill;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.Jobs;
import spadework.job.PitPlace;
import spadework.job.Restoration;
import spadework.job.Site;
import spadework.job.TeeAt;
import spadework.job.TestPit;
import spadework.job.Wall;
import spadework.job.Water;
import spadework.job.WaterJob;
import spadework.job.Work;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;

/**
 * Soil that is left or missing, and what is put back on top. Wall of 40 ft, main of 40 ft of whose 120 cf 15.5 lie in
 * the wall's trench; 51.738 + 3.870 cy are dug, and stone of 4.692 cy and two pipes of 0.1436 cy stay in the ground.
 */
class GroundTakeoffTest {
    private static final double STAYS = 4.692 + 2 * 0.1436;
    private static final double WEDGE = 2.5 * 40 / 27;

    private static final Water NO_PIPES = new Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    private static Job job(double regrade, double topsoil, double seed, double sod, double concrete, int plants) {
        Job j = Jobs.job();
        Restoration put = new Restoration(
                Length.ofFeet(regrade),
                Area.ofSquareFeet(topsoil),
                Length.ofInches(4),
                Area.ofSquareFeet(seed),
                Area.ofSquareFeet(sod),
                Area.ofSquareFeet(concrete),
                plants);
        return new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                new Work(j.walls(), j.corners(), j.water(), put, j.protection(), j.schedule()),
                j.pricing(),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
    }

    private static double of(Job job, PriceBook book, Measure measure) {
        return Measuring.of(job, book).quantities().stream()
                .filter(quantity -> quantity.measure() == measure)
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    private static PriceBook shrinking(String percent) {
        return Books.standard().filledBy(new Backfill(Percent.of(percent), "test"));
    }

    /** Soil that does not shrink leaves what stone and pipe take; loam swells 25% (E-02) and a truck takes 10 cy. */
    @Test
    void surplusIsHauledLooseByWholeLoads() {
        Job job = job(0, 0, 0, 0, 0, 0);
        PriceBook book = shrinking("0");
        assertThat(of(job, book, Measure.SURPLUS)).isCloseTo(STAYS, within(0.001));
        assertThat(of(job, book, Measure.HAUL)).isCloseTo(STAYS * 1.25, within(0.001));
        assertThat(of(job, book, Measure.HAUL_LOAD)).isEqualTo(1);
        assertThat(of(job, book, Measure.IMPORT)).isZero();
    }

    /** IRC R401.3 (F-22): 6 in of fall over 10 ft is 2.5 cf a foot, 3.704 cy along 40 ft: so much less is left. */
    @ParameterizedTest(name = "{0} ft graded")
    @CsvSource({"0", "20", "40"})
    void gradingTakesItsWedge(double regrade) {
        Job job = job(regrade, 0, 0, 0, 0, 0);
        assertThat(of(job, shrinking("0"), Measure.SURPLUS)).isCloseTo(STAYS - WEDGE * regrade / 40, within(0.001));
        assertThat(of(job, shrinking("0"), Measure.REGRADE)).isEqualTo(regrade);
    }

    /** Where the fill takes more than was dug the rest is brought in and nothing is hauled. */
    @Test
    void missingSoilIsBroughtIn() {
        Job job = job(40, 0, 0, 0, 0, 0);
        double dug = 51.738 + (120 - 15.5) / 27;
        double missing = (dug - STAYS + WEDGE) / 0.8 - dug;
        assertThat(of(job, shrinking("20"), Measure.SURPLUS)).isCloseTo(-missing, within(0.01));
        assertThat(of(job, shrinking("20"), Measure.IMPORT)).isCloseTo(missing, within(0.01));
        assertThat(of(job, shrinking("20"), Measure.HAUL)).isZero();
        assertThat(of(job, shrinking("20"), Measure.HAUL_LOAD)).isZero();
    }

    /**
     * The trench takes 40 × (2.5 + 5.667) = 326.7 sf at grade, the main 40 × 1 less 1 + 5.667 before the wall, together
     * 360; 10 ft along 40 ft of grading are 400. 200 sf of topsoil 4 in deep lie on half of that: 2.016 cy over the
     * wall's trench, 0.206 over the main's, 0.247 over ground that is only graded; the fill stops so much lower.
     */
    @Test
    void fillStopsBelowTheTopsoil() {
        Job bare = job(40, 0, 0, 0, 0, 0);
        Job covered = job(40, 200, 0, 0, 0, 0);
        PriceBook book = shrinking("0");
        assertThat(of(covered, book, Measure.TOPSOIL)).isCloseTo(200.0 / 3 / 27, within(1e-9));
        assertThat(of(bare, book, Measure.BACKFILL) - of(covered, book, Measure.BACKFILL))
                .isCloseTo(2.0165 + 0.2058, within(0.0005));
        assertThat(of(covered, book, Measure.SURPLUS) - of(bare, book, Measure.SURPLUS))
                .isCloseTo(2.0165 + 0.2058 + 0.2469, within(0.0005));
    }

    /** Without grading the dug ground alone is covered, and no more of it than there is topsoil for. */
    @ParameterizedTest(name = "{0} sf of topsoil: {1} sf of the fill")
    @CsvSource({"180, 180", "360, 360", "900, 360", "0, 0"})
    void topsoilGoesOnWhatWasDug(double topsoil, double over) {
        PriceBook book = shrinking("0");
        double less = of(job(0, 0, 0, 0, 0, 0), book, Measure.BACKFILL)
                - of(job(0, topsoil, 0, 0, 0, 0), book, Measure.BACKFILL);
        assertThat(less).isCloseTo(over / 3 / 27, within(0.0005));
        assertThat(of(job(0, topsoil, 0, 0, 0, 0), book, Measure.SURPLUS)).isCloseTo(STAYS + less, within(0.001));
    }

    /** Where no drain runs, all that was dug is filled again, up to the topsoil: 40 × (2.5 + 5.667) sf of 4 in. */
    @ParameterizedTest(name = "{0} sf of topsoil: {1} sf of it over the trench")
    @CsvSource({"0, 0", "5000, 326.6667"})
    void wallWithoutADrainIsFilled(double topsoil, double over) {
        Job job = job(0, topsoil, 0, 0, 0, 0).withWater(NO_PIPES);
        PriceBook book = shrinking("0");
        assertThat(of(job, book, Measure.BACKFILL))
                .isPositive()
                .isCloseTo(of(job, book, Measure.DUG) - over / 3 / 27, within(0.001));
    }

    /** What each fill leaves for its topsoil adds up to that over all that is dug, where dug places meet as well. */
    @ParameterizedTest(name = "pit {0}, {1} ft off the trench")
    @CsvSource({"OUTSIDE, 0.5", "OUTSIDE, 30", "INSIDE, "})
    void fillsStopBelowTheTopsoilThatLiesOnThem(PitPlace place, Double away) {
        Job sump = new WaterJob()
                .sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0)
                .teeAt(TeeAt.END)
                .build();
        Job placed = JobPipes.withOutlet(sump, outlet -> JobPipes.pitAt(outlet, place, Optional.ofNullable(away)));
        Job bare = dugOpen(placed, 0);
        Job covered = dugOpen(placed, 5000);
        PriceBook book = shrinking("0");
        double less = of(bare, book, Measure.BACKFILL) - of(covered, book, Measure.BACKFILL);
        assertThat(less).isPositive();
        assertThat(of(covered, book, Measure.SURPLUS) - of(bare, book, Measure.SURPLUS))
                .isCloseTo(less, within(0.01));
        assertThat(TopsoilShare.of(covered).filled().number() / 3 / 27).isCloseTo(less, within(0.01));
    }

    /** With a window well and a test pit, over which no topsoil is counted. */
    private static Job dugOpen(Job job, double topsoil) {
        Restoration put = job(0, topsoil, 0, 0, 0, 0).restoration();
        Wall w = job.walls().get(0);
        Wall well = new Wall(
                w.label(), w.where(), w.place(), w.depth(), w.footing(), w.surface(), w.openings(), 1, w.digging());
        TestPit pit = new TestPit("T1", Optional.empty(), Length.ofFeet(4), Length.ofFeet(3), Length.ofFeet(3));
        Site site = job.site().withTestPits(List.of(pit));
        Work work = job.work();
        return job.withSite(site)
                .withWork(
                        new Work(List.of(well), work.corners(), work.water(), put, work.protection(), work.schedule()));
    }

    /** 9 sf in a square yard. */
    @Test
    void planting() {
        Job job = job(40, 270, 900, 45, 18, 3);
        PriceBook book = Books.standard();
        assertThat(of(job, book, Measure.TOPSOIL)).isCloseTo(10.0 / 3, within(1e-9));
        assertThat(of(job, book, Measure.SEED)).isCloseTo(100, within(1e-9));
        assertThat(of(job, book, Measure.SOD)).isCloseTo(5, within(1e-9));
        assertThat(of(job, book, Measure.CONCRETE)).isCloseTo(2, within(1e-9));
        assertThat(of(job, book, Measure.PLANTS)).isEqualTo(3);
        assertThat(of(job, book, Measure.JOB)).isEqualTo(1);
    }

    /** Ground that is graded without a trench takes its wedge from elsewhere; where nothing is touched none is told. */
    @Test
    void noSoilNoBalance() {
        PriceBook book = shrinking("0");
        Job graded = Jobs.job(Jobs.site(), NO_PIPES);
        assertThat(of(graded, book, Measure.IMPORT)).isCloseTo(WEDGE, within(1e-9));
        assertThat(of(graded, book, Measure.SURPLUS)).isCloseTo(-WEDGE, within(1e-9));
        Job j = job(0, 0, 0, 0, 0, 0);
        Job none = new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                new Work(List.of(), List.of(), NO_PIPES, j.restoration(), j.protection(), j.schedule()),
                j.pricing(),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
        assertThat(Measuring.of(none, book).quantities())
                .extracting(Quantity::measure)
                .containsExactly(Measure.JOB);
    }

    /** What is left over and what is missing are called so. */
    @ParameterizedTest(name = "soil that shrinks {0}%: {1}")
    @CsvSource({"0, surplus soil", "20, soil that is missing"})
    void balanceIsNamed(String shrink, String name) {
        assertThat(Measuring.of(job(40, 0, 0, 0, 0, 0), shrinking(shrink)).quantities().stream()
                        .filter(quantity -> quantity.measure() == Measure.SURPLUS)
                        .map(quantity -> quantity.working().name()))
                .singleElement()
                .asString()
                .startsWith(name);
    }
}
