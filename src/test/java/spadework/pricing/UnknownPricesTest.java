// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.company.Company;
import spadework.company.Slowdown;
import spadework.company.WorkCondition;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Seepage;
import spadework.job.Side;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.job.WallPlace;
import spadework.job.Water;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.schedule.DayQuantities;

/**
 * What more wall and more depth cost is what the job with 100 ft and with 6 in more costs more, before rounding, for
 * each foot; a unit price is rounded up to the company's step.
 */
class UnknownPricesTest {
    private static final Company COMPANY = Books.company();
    private static final PriceBook BOOK = Books.standard();

    private static Quote quote(Job job) {
        return Pricing.of(job, COMPANY, BOOK, DayQuantities.takeoff(job, COMPANY, BOOK));
    }

    /** The price before rounding, step E of the build-up. */
    private static BigDecimal exact(Job job) {
        return quote(job).buildUp().get(3).value();
    }

    private static Dollars price(Job job, String code) {
        return quote(job).unitPrices().stream()
                .filter(price -> price.code().equals(code))
                .findFirst()
                .orElseThrow()
                .price();
    }

    private static Dollars up(BigDecimal more, int feet) {
        return Dollars.of(
                more.divide(BigDecimal.valueOf(feet), MathContext.DECIMAL128).setScale(0, RoundingMode.CEILING));
    }

    private static Wall second(Access access) {
        Wall w = Jobs.wall();
        Digging d = w.digging();
        return new Wall(
                "B",
                "side wall",
                new WallPlace(Side.EAST, w.from(), Length.ofFeet(20)),
                w.depth(),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                new Digging(access, d.handShare(), d.bottomWidth(), d.protection()));
    }

    private static Job two(Access access) {
        Water w = Jobs.water();
        FootingDrain d = w.drains().get(0);
        FootingDrain both = new FootingDrain(
                d.label(),
                List.of("A", "B"),
                d.item(),
                d.teeAt(),
                d.into(),
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
        return Jobs.job(
                Jobs.site(),
                new Water(List.of(both), w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()),
                Jobs.wall(),
                second(access));
    }

    /** Where nothing slows the work. */
    private static Job shallowInSand() {
        return Jobs.job(
                Jobs.with(Jobs.site(), new Soil(Texture.SAND, Seepage.NONE, SoilType.C)), Jobs.water(), Jobs.deep(3));
    }

    @Test
    void footOfWallAndStepOfDepth() {
        Job job = Jobs.job();
        BigDecimal now = exact(job);
        BigDecimal longer = exact(job.withWall(Jobs.wall().withLength(Length.ofFeet(140))));
        BigDecimal deeper = exact(job.withWall(Jobs.wall().deeperBy(Length.ofInches(6))));
        assertThat(price(job, "WALL-FOOT-A")).isEqualTo(up(longer.subtract(now), 100));
        assertThat(price(job, "WALL-DEEPER-A")).isEqualTo(up(deeper.subtract(now), 40));
        assertThat(quote(job).unitPrices())
                .filteredOn(price -> price.code().startsWith("WALL-"))
                .allSatisfy(price -> assertThat(price.unit()).isEqualTo(Unit.FOOT))
                .extracting(UnitPrice::name)
                .containsExactly("more wall", "deeper");
    }

    /** One wall stands for all that are dug the same way: the first of those a machine reaches, and of the others. */
    @Test
    void firstWallOfEachAccess() {
        assertThat(quote(two(Access.MACHINE)).unitPrices())
                .filteredOn(price -> price.code().startsWith("WALL-"))
                .extracting(UnitPrice::homeowner)
                .containsExactly("A", "A");
        assertThat(quote(two(Access.HAND)).unitPrices())
                .filteredOn(price -> price.code().startsWith("WALL-"))
                .extracting(UnitPrice::homeowner)
                .containsExactly("A", "A", "B", "B");
    }

    /** The book's items for what nobody sees before digging, by code, each for one of its units. */
    @Test
    void itemsOfTheBook() {
        List<LineItem> unknown = BOOK.items().values().stream()
                .filter(LineItem::unknown)
                .sorted((a, b) -> a.code().compareTo(b.code()))
                .toList();
        assertThat(unknown).isNotEmpty();
        assertThat(quote(shallowInSand()).unitPrices())
                .filteredOn(price -> !price.code().startsWith("WALL-"))
                .isEqualTo(unknown.stream()
                        .map(item -> new UnitPrice(
                                item.code(),
                                item.name(),
                                item.homeowner(),
                                item.unit(),
                                ItemPrice.of(item, BigDecimal.ONE, COMPANY, BOOK)))
                        .toList());
    }

    /** What may be needed anywhere is priced as slow as the slowest wall: deep, and in wet clay. */
    @Test
    void extraDiggingByHandIsSlowedAsDiggingByHandIs() {
        Job slow = Jobs.job(
                Jobs.with(Jobs.site(), new Soil(Texture.CLAY, Seepage.FREE, SoilType.C)), Jobs.water(), Jobs.deep(6));
        LineItem extra = BOOK.get("U-HAND");
        BigDecimal factor = COMPANY.slowdowns().stream()
                .filter(one ->
                        List.of(WorkCondition.DEEP, WorkCondition.WET_CLAY).contains(one.condition()))
                .map(Slowdown::factor)
                .reduce(BigDecimal.ONE, BigDecimal::multiply);
        assertThat(factor).isGreaterThan(BigDecimal.ONE);
        Direct direct = new Direct(COMPANY);
        BigDecimal hours = direct.hours(extra, BigDecimal.ONE, List.of()).multiply(factor);
        assertThat(price(shallowInSand(), "U-HAND")).isEqualTo(ItemPrice.of(extra, BigDecimal.ONE, COMPANY, BOOK));
        assertThat(price(slow, "U-HAND"))
                .isEqualTo(Selling.price(
                                COMPANY.priceRules(),
                                direct.of(extra, BigDecimal.ONE, hours, Dollars.ZERO)
                                        .direct()
                                        .exact())
                        .toStep(COMPANY.priceRules().step(), RoundingMode.CEILING));
        assertThat(extra.labor()).isEqualTo(BOOK.get("DIG-HAND").labor());
    }
}
