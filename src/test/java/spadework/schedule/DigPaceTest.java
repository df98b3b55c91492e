// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Company;
import spadework.company.Digger;
import spadework.job.Texture;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.DigKind;
import spadework.pricebook.PriceBook;

/** What a digging machine does in an hour, against the excavator formula and published ranges. */
class DigPaceTest {

    private static Digger digger(String bucket, String fill, String bulk, String wall, String efficiency) {
        return new Digger(
                new BigDecimal(bucket),
                Percent.of(fill),
                new BigDecimal(bulk),
                new BigDecimal(wall),
                Percent.of(efficiency),
                "test");
    }

    /**
     * The excavator formula of FM 5-434 ch. 8 and Peurifoy writes LCY/h = 3600 × bucket × fill × (minutes ÷ 60) ÷
     * cycle in seconds and BCY = LCY ÷ (1 + swell); these rows are worked by hand with it: 3 cy, fill 1.0, 20 s, 50
     * minutes is 450 loose an hour, over a swell of 25% 360.
     */
    @ParameterizedTest(name = "{0} cy bucket, {2} cycles: {5} bank cy an hour")
    @CsvSource({
        "3.0, 100, 180, 83.3333333, 25, 360.0",
        "1.5, 90, 144, 83.3333333, 25, 129.6",
        "0.14, 90, 60, 83.3, 25, 5.038",
        "0.14, 90, 60, 83.3, 40, 4.498",
        "0.14, 90, 60, 83.3, 12, 5.623"
    })
    void paceIsBucketTimesFillTimesCyclesTimesEfficiencyOverSwell(
            String bucket, String fill, String cycles, String efficiency, String swell, double bank) {
        double pace = DigPace.of(digger(bucket, fill, cycles, "1", efficiency), DigKind.BULK, Percent.of(swell))
                .number();
        assertThat(pace).isCloseTo(bank, within(bank * 0.001));
    }

    /**
     * Common practice, no source, for 3 to 4 t: 5 to 10 cy an hour beside a wall; 15 to 30 in an open trench, down to
     * 12 in a yard where the soil is swung to a pile. At 15 the installed price fell under what nine of ten bid for
     * common excavation (INDOT 203-02000).
     */
    @Test
    void shippedMachineLiesInWhatIsCommonForItsSize() {
        Digger mini = Books.company().diggers().get("mini-excavator");
        assertThat(DigPace.of(mini, DigKind.BULK, Percent.of("25")).number()).isBetween(12.0, 30.0);
        assertThat(DigPace.of(mini, DigKind.WALL_SIDE, Percent.of("25")).number())
                .isBetween(5.0, 10.0);
    }

    @Test
    void bookOfACompanyThatSaysNothingOfItsMachinesStaysTheSame() {
        Company silent = DayBooks.silent(Books.company());
        PriceBook book = Books.standard();
        assertThat(DigPace.paced(book, silent, Texture.SILTY_CLAY)).isSameAs(book);
    }

    @Test
    void onlyItemsThatDigTakeTheMachinesPace() {
        PriceBook book = Books.standard();
        PriceBook paced = DigPace.paced(book, Books.company(), Texture.SILTY_CLAY);
        assertThat(paced.get("DIG-MACH").labor().orElseThrow().perHour())
                .isEqualByComparingTo(
                        DigPace.of(Books.company().diggers().get("mini-excavator"), DigKind.WALL_SIDE, Percent.of("40"))
                                .value());
        assertThat(paced.get("TRENCH-PIPE")).isEqualTo(book.get("TRENCH-PIPE"));
        assertThat(paced.get("DIG-HAND")).isEqualTo(book.get("DIG-HAND"));
    }
}
