// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Condition;
import spadework.job.Finish;
import spadework.job.FinishSystem;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Opening;
import spadework.job.Surface;
import spadework.job.Wall;
import spadework.job.WallKind;
import spadework.job.WallSurface;
import spadework.measure.FilmThickness;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.Film;
import spadework.pricebook.Measure;
import spadework.takeoff.wall.WallFace;

/** What is done to a wall's face: 40 ft long, 5 ft to the footing's top, footing projecting 6 in. */
class WallFaceTest {

    private static double of(Job job, Measure measure) {
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity -> quantity.measure() == measure)
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    private static List<String> codes(Job job, Measure measure) {
        return Measuring.of(job, Books.standard()).lines().stream()
                .filter(line -> line.from()
                        .filter(quantity -> quantity.measure() == measure)
                        .isPresent())
                .map(TakeoffLine::code)
                .toList();
    }

    private static Wall wall(WallSurface surface, List<Opening> openings, int wells) {
        Wall w = Jobs.wall();
        return new Wall(w.label(), w.where(), w.place(), w.depth(), w.footing(), surface, openings, wells, w.digging());
    }

    private static Wall with(WallKind kind, FinishSystem system) {
        WallSurface s = Jobs.wall().surface();
        return wall(
                new WallSurface(kind, s.condition(), s.strip(), new Finish(system, Optional.empty(), Optional.empty())),
                List.of(),
                0);
    }

    /** Two windows of 3 × 1.5 ft below grade are 9 sf less: 40 × 5.5 − 9 to clean, 40 × (5 + 4/12) − 9 to cover. */
    @Test
    void openingsAreTakenOff() {
        Opening windows = new Opening("window", 2, Length.ofFeet(3), Length.ofFeet(1.5));
        Job job = Jobs.job(wall(Jobs.wall().surface(), List.of(windows), 2));
        assertThat(of(job, Measure.CLEAN)).isCloseTo(211, within(1e-9));
        assertThat(of(job, Measure.COAT)).isCloseTo(204.333, within(0.001));
        assertThat(of(job, Measure.PROTECT)).isCloseTo(204.333, within(0.001));
        assertThat(of(job, Measure.WINDOW_WELL)).isEqualTo(2);
        assertThat(cleaned(job)).isEqualTo("L × ((dt0 + dt1) ÷ 2 + p) − o");
        assertThat(cleaned(Jobs.job())).isEqualTo("L × ((dt0 + dt1) ÷ 2 + p)");
    }

    private static String cleaned(Job job) {
        Wall wall = job.walls().get(0);
        return WallFace.clean(spadework.takeoff.wall.WallMeasures.of(job, wall)).formula();
    }

    /** A wall that is all opening has nothing to clean, not less than nothing. */
    @Test
    void neverLessThanNothing() {
        Opening all = new Opening("door", 1, Length.ofFeet(40), Length.ofFeet(6));
        Job job = Jobs.job(wall(Jobs.wall().surface(), List.of(all), 0));
        assertThat(of(job, Measure.CLEAN)).isZero();
        assertThat(of(job, Measure.COAT)).isZero();
    }

    /** A coating wants a cove and no parge; a sheet on block wants a smooth face first, on poured wall none. */
    @ParameterizedTest(name = "{1} on {0}: coat {2}, sheet {3}, parge {4}, cove {5}")
    @CsvSource({
        "BLOCK,  COATING, 213.333, 0,       0,       40",
        "POURED, COATING, 213.333, 0,       0,       40",
        "BLOCK,  SHEET,   0,       213.333, 213.333, 0",
        "POURED, SHEET,   0,       213.333, 0,       0",
        "BLOCK,  PARGE,   213.333, 0,       213.333, 40"
    })
    void systems(WallKind kind, FinishSystem system, double coat, double sheet, double parge, double cove) {
        Job job = Jobs.job(with(kind, system));
        assertThat(of(job, Measure.COAT)).isCloseTo(coat, within(0.001));
        assertThat(of(job, Measure.SHEET)).isCloseTo(sheet, within(0.001));
        assertThat(of(job, Measure.PARGE)).isCloseTo(parge, within(0.001));
        assertThat(of(job, Measure.COVE)).isCloseTo(cove, within(0.001));
        assertThat(of(job, Measure.PROTECT)).isCloseTo(213.333, within(0.001));
        assertThat(of(job, Measure.COAT_GALLONS) > 0).isEqualTo(system != FinishSystem.SHEET);
        assertThat(WallFace.coverItem(job.walls().get(0), Books.standard())
                        .orElseThrow()
                        .follows())
                .contains(system == FinishSystem.SHEET ? Measure.SHEET : Measure.COAT);
    }

    /** What is taken off an old wall is stripped by the item that the job names, over all that is cleaned. */
    @Test
    void stripsAndCracks() {
        Condition c = Jobs.sound();
        Condition cracked = new Condition(
                Surface.COATED, Length.ofFeet(7.5), false, false, c.bow(), false, c.tiedToFloor(), Set.of());
        Job job = Jobs.job(wall(
                new WallSurface(
                        WallKind.BLOCK,
                        cracked,
                        List.of("STRIP-DAMP", "STRIP-PARGE"),
                        Jobs.wall().finish()),
                List.of(),
                0));
        assertThat(of(job, Measure.STRIP)).isCloseTo(220, within(1e-9));
        assertThat(codes(job, Measure.STRIP)).containsExactly("STRIP-DAMP", "STRIP-PARGE");
        assertThat(of(job, Measure.CRACK)).isEqualTo(7.5);
        assertThat(of(Jobs.job(), Measure.STRIP)).isZero();
        assertThat(codes(Jobs.job(), Measure.CRACK)).isEmpty();
        assertThat(of(job, Measure.FOOTING_CLEAN)).isEqualTo(40);
    }

    /** The item that a job chooses takes the place of the book's, and its film is the item's or the job's own. */
    @Test
    void chosenCoat() {
        Finish thick = new Finish(FinishSystem.COATING, Optional.of("COAT-ASP"), Optional.of(new FilmThickness(80)));
        Job job = Jobs.job(Jobs.with(Jobs.wall(), thick));
        assertThat(codes(job, Measure.COAT)).containsExactly("COAT-ASP");
        assertThat(codes(Jobs.job(), Measure.COAT)).containsExactly("COAT-RUB");
        Film film = Books.standard().get("COAT-ASP").film().orElseThrow();
        assertThat(WallFace.dryFilm(job.walls().get(0), film)).isEqualTo(new FilmThickness(80));
        assertThat(WallFace.dryFilm(Jobs.wall(), film)).isEqualTo(film.dryFilm());
        double solids = film.volumeSolids().fraction().doubleValue();
        // sf × wet mils ÷ 1604.17 (C-01), wet = dry ÷ solids (C-02)
        assertThat(of(job, Measure.COAT_GALLONS)).isCloseTo(213.3333 * 80 / solids / 1604.1667, within(0.001));
    }

    /** 10% is bought on top on poured wall, 25% on masonry (published applicator sheet: 25 sf a gallon and 20). */
    @ParameterizedTest
    @CsvSource({"POURED, 10", "BLOCK, 25", "STONE, 25"})
    void wasteByTheWall(WallKind kind, String percent) {
        assertThat(WallFace.waste(kind)).isEqualTo(Percent.of(percent));
        TakeoffLine coat = Measuring.of(Jobs.job(with(kind, FinishSystem.COATING)), Books.standard()).lines().stream()
                .filter(line -> line.code().equals("COAT-RUB"))
                .findFirst()
                .orElseThrow();
        assertThat(coat.waste()).contains(Percent.of(percent));
    }
}
