// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.job.Water;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;

/**
 * Whether water runs by itself to a place that was looked at: the drain's low invert, less half a foot over the place,
 * against its distance at the least slope of the main, 1/8 in a foot for 4 in (IPC 704.1 as in Chicago Table
 * 18-29-704.1, G-03).
 */
class OutletChoiceTest {
    private static final PriceBook BOOK = Books.standard();

    private static OutletChoice choice(WaterJob waterJob) {
        Job job = waterJob.build();
        return OutletChoice.of(job, BOOK, Network.of(job, BOOK));
    }

    /** The drain's low end lies at 92.20. 60 ft at 1/8 in are 0.625 ft: the place may lie at 91.075 and no higher. */
    @ParameterizedTest(name = "place at {0} ft, 60 ft away: falls {1}")
    @CsvSource({"91.0, true", "91.075, true", "91.076, false", "93, false"})
    void waterRunsWhereThereIsFallEnough(double level, boolean falls) {
        OutletChoice.Considered place =
                choice(new WaterJob().candidate("P1", 60, level)).considered().get(0);
        assertThat(place.needed().number()).isCloseTo(0.625, within(1e-9));
        assertThat(place.available().number()).isCloseTo(92.2 - level - 0.5, within(1e-9));
        assertThat(place.falls()).isEqualTo(falls);
    }

    /** Its tee at the start, the drain's low end is its start. */
    @Test
    void lowEndIsWhereTheWaterLeaves() {
        OutletChoice choice =
                choice(new WaterJob().drain(92.1, 92.5).teeAt(TeeAt.START).candidate("P1", 60, 91));
        assertThat(choice.considered().get(0).available().number()).isCloseTo(0.6, within(1e-9));
    }

    /** The lower of a drain's two sides decides. */
    @Test
    void lowestDrainDecides() {
        Job job = new WaterJob().candidate("P1", 60, 91).candidate("P2", 80, 90).build();
        Water w = job.water();
        var d = w.drains().get(0);
        var lower = new spadework.job.FootingDrain(
                "D2",
                d.along(),
                d.item(),
                d.teeAt(),
                d.into(),
                d.startInvert(),
                java.util.Optional.of(Length.ofFeet(92.0)),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
        Job two = job.withWater(
                new Water(List.of(d, lower), w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()));
        assertThat(OutletChoice.of(two, BOOK, Network.of(two, BOOK)).considered())
                .extracting(place -> Math.round(place.available().number() * 1000))
                .containsExactly(500L, 1500L);
    }

    /** Where a drain's low end is not known, or there is no drain, nobody can say. */
    @Test
    void unknownLowEndLeavesItOpen() {
        assertThat(choice(new WaterJob().drain(92.6, null).candidate("P1", 60, 91))
                        .considered())
                .isEmpty();
        Job job = new WaterJob().candidate("P1", 60, 91).build();
        Water w = job.water();
        Job dry = job.withWater(
                new Water(List.of(), w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()));
        assertThat(OutletChoice.of(dry, BOOK, Network.of(dry, BOOK)).considered())
                .isEmpty();
    }

    /**
     * The pipe that a job names, else the book's standard one; 6 in (ASTM D3034 SDR 35) falls 1/8 in a foot as well.
     */
    @Test
    void pipeIsTheJobsElseTheBooks() {
        Job usual = new WaterJob().build();
        Job six = new WaterJob().mainItem("MAIN-6").build();
        assertThat(Pipes.main(usual, BOOK).nominal().inches()).isCloseTo(4, within(1e-9));
        assertThat(Pipes.main(six, BOOK).nominal().inches()).isCloseTo(6, within(1e-9));
        assertThat(Pipes.of(six.water().mains().get(0), BOOK, Measure.MAIN_PIPE))
                .isEqualTo(Pipes.main(six, BOOK));
        Job none = new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0).build();
        assertThat(Pipes.main(none, BOOK)).isEqualTo(Pipes.main(usual, BOOK));
    }

    /** Intake holds a book to it; whoever comes past intake is told. */
    @Test
    void bookWithoutAPipeIsSaidToLackIt() {
        PriceBook empty = new PriceBook("empty", LocalDate.of(2026, 1, 1), Map.of(), Map.of(), List.of(), 1.4, 10);
        assertThatThrownBy(() -> Pipes.discharge(empty))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no standard item for " + Measure.SUMP_DISCHARGE.trade());
        LineItem permit = BOOK.get("PERMIT");
        Job job = new WaterJob().mainItem("PERMIT").build();
        assertThat(permit.pipe()).isEmpty();
        assertThatThrownBy(() -> Pipes.main(job, BOOK))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("PERMIT has no pipe size");
    }
}
