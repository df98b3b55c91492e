// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spadework.job.Alteration;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Option;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.pricing.OfferedPrice;
import spadework.pricing.PricedSection;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.pricing.UnitPrice;
import spadework.takeoff.Measuring;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffSection;

/** What moved between two issues: the sections that differ, those that came, those that went. */
class MovedTest {
    private static final PriceBook BOOK = Books.standard();
    private static final LocalDate SINCE = LocalDate.of(2026, 7, 1);
    private static final Takeoff NOTHING = new Takeoff(List.of(), List.of(), List.of(), List.of());

    private static OfferedPrice quote(PricedSection... sections) {
        Quote q = Pricing.known(Jobs.job(), Books.company(), BOOK, Measuring.of(Jobs.job(), BOOK));
        Dollars sum = Dollars.total(
                List.of(sections).stream().map(PricedSection::price).toList());
        return new Quote(
                        q.bookTitle(),
                        q.bookDate(),
                        List.of(),
                        List.of(sections),
                        Dollars.ZERO,
                        sum,
                        Dollars.ZERO,
                        sum,
                        List.of(),
                        List.of(),
                        List.of())
                .offered();
    }

    private static PricedSection section(String name, String price) {
        Dollars dollars = Dollars.of(price);
        return new PricedSection(new TakeoffSection(Section.WALL, name, name), dollars, Dollars.ZERO, dollars);
    }

    private static IssueDifference.IssuedOffer offer(OfferedPrice price, PricedOption... options) {
        return new IssueDifference.IssuedOffer(price, List.of(options), NOTHING);
    }

    private static PricedOption option(String label, String total) {
        return new PricedOption(
                new Option(label, "Downspout " + label, "it has none", Alteration.NONE),
                new Sum(Dollars.of(total), Dollars.ZERO),
                List.of(),
                false);
    }

    private static OfferedPrice promising(UnitPrice... prices) {
        OfferedPrice price = quote(section("A", "100.00"));
        return new OfferedPrice(
                price.bookTitle(),
                price.bookDate(),
                price.sections(),
                price.minimumTopUp(),
                price.price(),
                price.tax(),
                price.total(),
                List.of(prices),
                price.payments());
    }

    private static UnitPrice unit(String code, String price) {
        return new UnitPrice(code, code, code, Unit.CUBIC_YARD, Dollars.of(price));
    }

    @Test
    void optionsThatCostSomethingElseThatCameAndThatWent() {
        PricedOption dearer = option("OP1", "120.00");
        PricedOption gone = option("OP2", "50.00");
        PricedOption came = option("OP3", "7.00");
        OfferedPrice price = quote(section("A", "100.00"));
        PricedOption same = option("OP4", "9.00");
        assertThat(IssueDifference.between(
                                SINCE,
                                offer(price, option("OP1", "100.00"), gone, same),
                                offer(price, dearer, came, same))
                        .options())
                .containsExactly(move(dearer, "100.00", "120.00"), move(came, null, "7.00"), move(gone, "50.00", null));
    }

    @Test
    void unitPricesThatMovedThatCameAndThatWent() {
        assertThat(IssueDifference.between(
                                SINCE,
                                offer(promising(unit("ROCK", "160.00"), unit("STUMP", "90.00"), unit("SAME", "1.00"))),
                                offer(promising(unit("ROCK", "165.00"), unit("SOFT", "40.00"), unit("SAME", "1.00"))))
                        .unitPrices())
                .containsExactly(
                        move(unit("ROCK", "165.00"), "160.00", "165.00"),
                        move(unit("SOFT", "40.00"), null, "40.00"),
                        move(unit("STUMP", "90.00"), "90.00", null));
    }

    private static <T> IssueDifference.PromiseMove<T> move(T promised, String before, String after) {
        return new IssueDifference.PromiseMove<>(
                promised,
                Optional.ofNullable(before).map(Dollars::of),
                Optional.ofNullable(after).map(Dollars::of));
    }

    @Test
    void sectionsThatDifferThatCameAndThatWent() {
        IssueDifference moved = IssueDifference.between(
                SINCE,
                offer(quote(section("A", "100.00"), section("B", "50.00"), section("C", "10.00"))),
                offer(quote(section("A", "120.00"), section("B", "50.00"), section("D", "7.00"))));
        assertThat(moved.sections())
                .containsExactly(
                        new IssueDifference.SectionMove("A", Dollars.of("100.00"), Dollars.of("120.00")),
                        new IssueDifference.SectionMove("D", Dollars.ZERO, Dollars.of("7.00")),
                        new IssueDifference.SectionMove("C", Dollars.of("10.00"), Dollars.ZERO));
        assertThat(moved.sections())
                .extracting(IssueDifference.SectionMove::difference)
                .containsExactly(Dollars.of("20.00"), Dollars.of("7.00"), Dollars.of("-10.00"));
        assertThat(moved.before()).isEqualTo(Dollars.of("160.00"));
        assertThat(moved.after()).isEqualTo(Dollars.of("177.00"));
        assertThat(moved.since()).isEqualTo(SINCE);
        assertThat(moved.fromWork()).isEmpty();
        assertThat(moved.fromPrices()).isEmpty();
    }

    @Test
    void whatWorkAndPricesMadeOfItAddToTheDifference() {
        IssueDifference moved = IssueDifference.between(
                        SINCE, offer(quote(section("A", "100.00"))), offer(quote(section("A", "130.00"))))
                .withRepriced(Dollars.of("110.00"));

        assertThat(moved.fromPrices()).contains(Dollars.of("10.00"));
        assertThat(moved.fromWork()).contains(Dollars.of("20.00"));
    }

    @Test
    void sameIssueMovesNothing() {
        OfferedPrice same = quote(section("A", "100.00"));
        IssueDifference moved = IssueDifference.between(SINCE, offer(same), offer(same));
        assertThat(moved.sections()).isEmpty();
        assertThat(moved.quantities()).isEmpty();
    }

    @Test
    void quantitiesAreTold() {
        Job longer = Jobs.job(Jobs.wall().withLength(Length.ofFeet(41)));
        OfferedPrice same = quote();
        IssueDifference moved = IssueDifference.between(
                SINCE,
                new IssueDifference.IssuedOffer(same, List.of(), Measuring.of(Jobs.job(), BOOK)),
                new IssueDifference.IssuedOffer(same, List.of(), Measuring.of(longer, BOOK)));
        assertThat(moved.quantities())
                .isEqualTo(QuantityChanges.between(Measuring.of(Jobs.job(), BOOK), Measuring.of(longer, BOOK)));
        assertThat(moved.quantities()).isNotEmpty();
    }
}
