// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.Unit;
import spadework.money.Dollars;

/** What a price leaves, on the published build-up: 12,000 direct, with 10% and 20% on it 15,840. */
class MarginTest {

    private static PricedLine line(String labor, String subcontract) {
        return new PricedLine(
                "X",
                "x",
                Priced.WALL,
                BigDecimal.ONE,
                Unit.EACH,
                "",
                new CostParts(
                        Dollars.ZERO,
                        Dollars.ZERO,
                        Dollars.of(labor),
                        Dollars.ZERO,
                        Dollars.of(subcontract),
                        Dollars.ZERO),
                "",
                BigDecimal.ZERO,
                Dollars.ZERO,
                Dollars.ZERO);
    }

    /** 2,160 of 18,000 is 12%; 1,900.80 of 17,740.80, the price by a markup of 12%, is 10.7%. */
    @ParameterizedTest(name = "{0}: {1}%")
    @CsvSource({"18000, 12.0", "17740.80, 10.7", "15840, 0.0", "15000, -5.6", "15855.86, 0.1", "31680, 50.0"})
    void shareOfThePriceThatIsLeft(String price, String margin) {
        List<PricedLine> lines = List.of(line("7000.00", "1000.00"), line("0.00", "4000.00"));
        assertThat(Margin.of(Priced.company().priceRules(), Dollars.of(price), lines))
                .contains(new BigDecimal(margin));
    }

    @Test
    void noPriceLeavesNoShare() {
        assertThat(Margin.of(Priced.company().priceRules(), Dollars.ZERO, List.of(line("1.00", "0.00"))))
                .isEqualTo(Optional.empty());
    }

    /** A list that is still to be worked out stays so; one that somebody could change is copied. */
    @Test
    void lazyListsAreKeptAndOthersCopied() {
        List<Integer> asked = new ArrayList<>();
        LazyList<String> later = new LazyList<>(() -> {
            asked.add(1);
            return List.of("a", "b");
        });
        List<String> kept = LazyList.kept(later);
        assertThat(asked).isEmpty();
        assertThat(kept).containsExactly("a", "b").hasSize(2);
        assertThat(asked).hasSize(1);

        List<String> mine = new ArrayList<>(List.of("c"));
        List<String> copied = LazyList.kept(mine);
        mine.add("d");
        assertThat(copied).containsExactly("c");
    }
}
