// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.TakenAway;
import spadework.pricebook.Assembly;
import spadework.pricebook.Books;
import spadework.pricebook.Driver;
import spadework.pricebook.PriceBook;
import spadework.samples.Samples;

/** What is bought for items that a job puts in by hand. */
class NetMaterialTest {
    private static final Job SAMPLE = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"))
            .dossier()
            .job();

    /**
     * Stone 1.40 ton/cy as the book says. A gallon is 1604.17 sf mils (231 cu in); 60 mil dry at 65% are 92.31 mil
     * wet.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"STONE-MACH, 3, 4.2", "STONE-HAND, 0.5, 0.7", "COAT-RUB, 100, 5.7542", "SEED, 12, 12", "AC-LIFT, 1, 0"})
    void handPutItemBuysWhatItTakes(String code, BigDecimal quantity, double bought) {
        PriceBook book = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"))
                .dossier()
                .book();
        double each = code.equals("SEED")
                ? book.get(code).material().orElseThrow().each().doubleValue() * quantity.doubleValue()
                : bought;
        assertThat(NetMaterial.of(book, book.get(code), quantity).doubleValue()).isCloseTo(each, within(1e-4));
    }

    @Test
    void stoneOfAnAssemblyAndStoneByHandAreBoughtAlike() {
        PriceBook book = Books.standard();
        Assembly set = new Assembly(
                "SET", "Set", Driver.JOB, List.of(new Assembly.Part("STONE-MACH", new BigDecimal("3"))), List.of());
        PriceBook own = new PriceBook(
                book.title(),
                book.dated(),
                book.items(),
                new HashMap<>(Map.of("SET", set)),
                book.earth(),
                book.stoneTonsPerCubicYard(),
                book.truckCubicYards());
        double before = tons(Measuring.of(SAMPLE, own));
        double assembly = tons(Measuring.of(with(new ExtraItem("SET", Optional.empty(), "drain", "more")), own));
        double byHand = tons(Measuring.of(
                with(new ExtraItem("STONE-MACH", Optional.of(new BigDecimal("3")), "drain", "more")), own));
        assertThat(byHand).isCloseTo(before + 4.2, within(1e-9));
        assertThat(assembly).isEqualTo(byHand);
    }

    private static Job with(ExtraItem extra) {
        return Altered.of(
                SAMPLE,
                new Alteration(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(extra),
                        Optional.empty(),
                        TakenAway.NOTHING));
    }

    private static double tons(Takeoff takeoff) {
        return takeoff.lines().stream()
                .filter(line -> line.code().equals("STONE-MACH"))
                .mapToDouble(line -> line.bought().orElseThrow().doubleValue())
                .sum();
    }
}
