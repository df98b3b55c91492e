// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.measure.Length;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.pricing.OfferedPrice;
import spadework.pricing.PricedSection;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
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

    @Test
    void sectionsThatDifferThatCameAndThatWent() {
        IssueDifference moved = IssueDifference.between(
                SINCE,
                quote(section("A", "100.00"), section("B", "50.00"), section("C", "10.00")),
                NOTHING,
                quote(section("A", "120.00"), section("B", "50.00"), section("D", "7.00")),
                NOTHING);
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
    }

    @Test
    void sameIssueMovesNothing() {
        OfferedPrice same = quote(section("A", "100.00"));
        IssueDifference moved = IssueDifference.between(SINCE, same, NOTHING, same, NOTHING);
        assertThat(moved.sections()).isEmpty();
        assertThat(moved.quantities()).isEmpty();
    }

    @Test
    void quantitiesAreTold() {
        Job longer = Jobs.job(Jobs.wall().withLength(Length.ofFeet(41)));
        OfferedPrice same = quote();
        IssueDifference moved =
                IssueDifference.between(SINCE, same, Measuring.of(Jobs.job(), BOOK), same, Measuring.of(longer, BOOK));
        assertThat(moved.quantities())
                .isEqualTo(QuantityChanges.between(Measuring.of(Jobs.job(), BOOK), Measuring.of(longer, BOOK)));
        assertThat(moved.quantities()).isNotEmpty();
    }
}
