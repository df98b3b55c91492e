// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Company;
import spadework.job.Agreements;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.pricing.SectionPrice;
import spadework.pricing.UnitPrice;
import spadework.schedule.DayQuantities;
import spadework.schedule.MeasuredStages;

/** Each price of a signed contract has a name under which it is sealed, and stands as it was sealed. */
class SealedFiguresTest {
    private static final Company COMPANY = Books.company();
    private static final PriceBook BOOK = Books.standard();
    private static final Job JOB = Agreements.with(
            Jobs.job(),
            Agreements.agreement(
                    List.of(Agreements.option("OP1", Agreements.wall("C", 20))),
                    Optional.of(Agreements.accepted(List.of("OP1"), List.of())),
                    List.of()));
    private static final Quote QUOTE = Pricing.of(JOB, COMPANY, BOOK, DayQuantities.takeoff(JOB, COMPANY, BOOK));
    private static final Contract TODAY = Contracting.of(JOB, COMPANY, BOOK, QUOTE);

    private static Contract signed(Map<String, Dollars> figures) {
        return Contracting.of(JOB, new MeasuredStages(COMPANY, BOOK), QUOTE, new SealedFigures(figures, Map.of()));
    }

    private static Map<String, Dollars> with(String name, UnaryOperator<Dollars> change) {
        Map<String, Dollars> figures = new HashMap<>(SealedFigures.of(TODAY));
        assertThat(figures).containsKey(name);
        figures.computeIfPresent(name, (key, was) -> change.apply(was));
        return figures;
    }

    @Test
    void everyPriceOfTheContractIsSealedUnderItsName() {
        Map<String, Dollars> figures = SealedFigures.of(TODAY);
        assertThat(figures)
                .containsEntry("total", TODAY.contracted().total())
                .containsEntry("proposed.price", QUOTE.price())
                .containsEntry("proposed.tax", QUOTE.tax())
                .containsEntry("minimum", TODAY.proposed().minimumTopUp())
                .containsEntry("option.OP1.price", TODAY.options().get(0).sum().price())
                .containsEntry("option.OP1.tax", TODAY.options().get(0).sum().tax());
        TODAY.proposed()
                .sections()
                .forEach(section -> assertThat(figures)
                        .containsEntry("section." + section.section().name(), section.price()));
        TODAY.proposed()
                .unitPrices()
                .forEach(price -> assertThat(figures).containsEntry("unit." + price.code(), price.price()));
        assertThat(figures)
                .containsEntry("payment.1", TODAY.payments().get(0).amount())
                .containsEntry("payment.2", TODAY.payments().get(1).amount())
                .hasSize(6
                        + TODAY.proposed().sections().size()
                        + TODAY.proposed().unitPrices().size()
                        + 2);
        assertThat(figures.keySet()).allMatch(SealedFigures::isFigure);
    }

    @ParameterizedTest(name = "{0}: a figure is {1}")
    @CsvSource({
        "total, true",
        "minimum, true",
        "proposed.tax, true",
        "section.A, true",
        "unit.U-ROCK, true",
        "option.OP1.price, true",
        "payment.1, true",
        "totals, false",
        "proposed, false",
        "price book, false",
        "signed on, false"
    })
    void namesOfFiguresAreTold(String name, boolean figure) {
        assertThat(SealedFigures.isFigure(name)).isEqualTo(figure);
    }

    @Test
    void sectionStandsAsItWasSealed() {
        SectionPrice first = TODAY.proposed().sections().get(0);
        Dollars sealed = Dollars.of("4321.00");
        Contract signed = signed(with("section." + first.section().name(), was -> sealed));
        assertThat(signed.proposed().sections().get(0)).isEqualTo(new SectionPrice(first.section(), sealed));
        int sections = TODAY.proposed().sections().size();
        assertThat(signed.proposed().sections().subList(1, sections))
                .isEqualTo(TODAY.proposed().sections().subList(1, sections));
    }

    @Test
    void unitPriceAndMinimumStandAsTheyWereSealed() {
        UnitPrice first = TODAY.proposed().unitPrices().get(0);
        Dollars sealed = Dollars.of("43.21");
        Contract signed = signed(with("unit." + first.code(), was -> sealed));
        assertThat(signed.proposed().unitPrices().get(0))
                .isEqualTo(new UnitPrice(first.code(), first.name(), first.homeowner(), first.unit(), sealed));
        assertThat(signed.proposed().unitPrices().subList(1, 3))
                .isEqualTo(TODAY.proposed().unitPrices().subList(1, 3));
        assertThat(signed(with("minimum", was -> sealed)).proposed().minimumTopUp())
                .isEqualTo(sealed);
    }

    /**
     * An option that was taken at 500.00 and 36.25 of tax: 536.25 of the total are its own, whatever it costs today.
     */
    @Test
    void optionStandsAsItWasSealed() {
        Map<String, Dollars> figures = with("option.OP1.price", was -> Dollars.of("500.00"));
        figures.put("option.OP1.tax", Dollars.of("36.25"));
        figures.put("total", Dollars.of("10536.25"));
        Contract signed = signed(figures);
        assertThat(signed.options().get(0).sum()).isEqualTo(new Sum(Dollars.of("500.00"), Dollars.of("36.25")));
        assertThat(signed.proposed().total()).isEqualTo(Dollars.of("10000.00"));
        assertThat(signed.contracted().total()).isEqualTo(Dollars.of("10536.25"));
    }

    /** A figure that an older line of the register lacks is figured again; a tax that it lacks is none. */
    @Test
    void whatIsNotSealedIsFigured() {
        Map<String, Dollars> figures = Map.of("total", Dollars.of("9000.00"), "proposed.price", Dollars.of("8000.00"));
        Contract signed = signed(figures);
        assertThat(signed.proposed().sections()).isEqualTo(TODAY.proposed().sections());
        assertThat(signed.proposed().unitPrices()).isEqualTo(TODAY.proposed().unitPrices());
        assertThat(signed.proposed().minimumTopUp()).isEqualTo(TODAY.proposed().minimumTopUp());
        assertThat(signed.options()).isEqualTo(TODAY.options());
        assertThat(signed.proposed().tax()).isEqualTo(Dollars.ZERO);
    }
}
