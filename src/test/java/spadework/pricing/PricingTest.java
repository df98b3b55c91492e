// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.company.Company;
import spadework.company.Tax;
import spadework.company.TaxMode;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Protection;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.schedule.DayQuantities;

class PricingTest {
    private static final Company COMPANY = Books.company();
    private static final PriceBook BOOK = Books.standard();

    private static Quote quote(Job job, Company company) {
        return Pricing.of(job, company, BOOK, DayQuantities.takeoff(job, company, BOOK));
    }

    private static Company taxed(TaxMode mode, String rate) {
        Company c = COMPANY;
        return new Company(
                c.name(),
                c.credentials(),
                c.contact(),
                c.letterhead(),
                c.rates(),
                c.production(),
                c.priceRules(),
                new Tax(mode, Percent.of(rate), Map.of()),
                c.usualTerms());
    }

    private static Job random(long seed) {
        Random random = new Random(seed);
        Wall wall = Jobs.wall()
                .withLength(Length.ofFeet(4 + random.nextInt(60)))
                .deeperBy(Length.ofInches(random.nextInt(24) - 20));
        Digging digging = new Digging(
                Access.values()[random.nextInt(2)],
                Percent.of(Integer.toString(random.nextInt(60))),
                Length.ofInches(12 + random.nextInt(30)),
                Protection.values()[random.nextInt(3)]);
        return Jobs.job(Jobs.with(wall, digging));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsPrintedAddsUpToTheCent(long seed) {
        Quote quote = quote(random(seed), COMPANY);
        for (PricedLine line : quote.lines()) {
            assertThat(line.unitPrice().exact().times(line.quantity()).toCents(RoundingMode.HALF_UP))
                    .as(line.code())
                    .isEqualTo(line.price());
        }
        for (PricedSection section : quote.sections()) {
            List<Dollars> prices = quote.lines().stream()
                    .filter(line -> line.section().equals(section.section()))
                    .map(PricedLine::price)
                    .toList();
            assertThat(Dollars.total(prices)).isEqualTo(section.lines());
            assertThat(section.lines().plus(section.rounding())).isEqualTo(section.price());
            assertThat(section.price().amount().remainder(BigDecimal.ONE)).isEqualByComparingTo("0");
        }
        Dollars sections = Dollars.total(
                quote.sections().stream().map(PricedSection::price).toList());
        assertThat(sections.plus(quote.minimumTopUp())).isEqualTo(quote.price());
        assertThat(Dollars.total(quote.payments().stream().map(Due::amount).toList()))
                .isEqualTo(quote.total());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreDepthNeverCostsLessBesideWhatIsPricedByDays(long seed) {
        Job job = random(seed);
        Wall wall = job.walls().get(0);
        Dollars before = besideDays(quote(job, COMPANY));
        Dollars after = besideDays(quote(job.withWall(wall.deeperBy(Length.ofInches(9))), COMPANY));
        assertThat(after).isGreaterThanOrEqualTo(before);
    }

    /** A machine stands whole days: one hour more of digging can save it one. */
    private static Dollars besideDays(Quote quote) {
        return Dollars.total(quote.lines().stream()
                .filter(line -> BOOK.get(line.code())
                        .follows()
                        .filter(Measure::isByDays)
                        .isEmpty())
                .map(PricedLine::price)
                .toList());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreWallNeverCostsLess(long seed) {
        Job job = random(seed);
        Wall wall = job.walls().get(0);
        Dollars before = quote(job, COMPANY).price();
        Dollars after = quote(job.withWall(wall.withLength(wall.length().plus(Length.ofFeet(3)))), COMPANY)
                .price();
        assertThat(after).isGreaterThanOrEqualTo(before);
    }

    /** A small job costs the minimum, whether the wall is 5 or 10 ft long, and shows it apart. */
    @ParameterizedTest(name = "{0} ft of wall")
    @CsvSource({"5", "10"})
    void smallJobsCostTheMinimum(double feet) {
        spadework.job.Water none =
                new spadework.job.Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        Wall wall = Jobs.wall().withLength(Length.ofFeet(feet)).deeperBy(Length.ofFeet(-3));
        Quote quote = quote(Jobs.job(Jobs.site(), none, wall), COMPANY);
        assertThat(quote.price()).isEqualTo(COMPANY.priceRules().minimum());
        assertThat(quote.minimumTopUp().isZero()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(TaxMode.class)
    void taxFollowsTheCompanysSetting(TaxMode mode) {
        Quote quote = quote(Jobs.job(), taxed(mode, "7"));
        Dollars purchaseTax = Dollars.total(
                quote.lines().stream().map(line -> line.cost().purchaseTax()).toList());
        assertThat(purchaseTax.isZero()).isEqualTo(mode != TaxMode.ON_PURCHASES);
        assertThat(quote.tax())
                .isEqualTo(mode == TaxMode.ON_PRICE ? SalesTax.on(quote.price(), Percent.of("7")) : Dollars.ZERO);
        assertThat(quote.total()).isEqualTo(quote.price().plus(quote.tax()));
    }

    /** Shares of what is ordered add to the cost of the packages: nothing is bought twice or lost. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void materialOnTheLinesIsWhatIsOrdered(long seed) {
        Job job = random(seed);
        var takeoff = DayQuantities.takeoff(job, COMPANY, BOOK);
        Quote quote = Pricing.of(job, COMPANY, BOOK, takeoff);
        for (var purchase : takeoff.purchases()) {
            Dollars ordered = BOOK.get(purchase.code())
                    .material()
                    .orElseThrow()
                    .cost()
                    .exact()
                    .times(purchase.packages())
                    .toCents(RoundingMode.UNNECESSARY);
            Dollars onLines = Dollars.total(quote.lines().stream()
                    .filter(line -> line.code().equals(purchase.code()))
                    .map(line -> line.cost().material())
                    .toList());
            assertThat(onLines).as(purchase.code()).isEqualTo(ordered);
        }
    }

    @Test
    void unknownsArePricedOutsideTheTotal() {
        Quote quote = quote(Jobs.job(), COMPANY);
        assertThat(quote.unitPrices())
                .extracting(UnitPrice::code)
                .contains("WALL-FOOT-A", "WALL-DEEPER-A", "U-ROCK", "U-DEBRIS");
        assertThat(quote.unitPrices())
                .allSatisfy(price ->
                        assertThat(price.price().isLessThan(Dollars.of("1.00"))).isFalse());
        assertThat(quote.lines()).extracting(PricedLine::code).noneMatch(code -> code.startsWith("U-"));
    }

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }
}
