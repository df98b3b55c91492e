// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Company;
import spadework.company.Tax;
import spadework.company.TaxMode;
import spadework.job.Actual;
import spadework.job.Agreement;
import spadework.job.Agreements;
import spadework.job.AsBuilt;
import spadework.job.BuiltWall;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.measure.Weight;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.ItemCost;
import spadework.pricebook.ItemIdentity;
import spadework.pricebook.ItemUpkeep;
import spadework.pricebook.ItemUse;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.pricebook.Source;
import spadework.pricing.CostParts;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;
import spadework.takeoff.TakeoffSection;
import spadework.working.Given;

/**
 * What the record of the work tells of items that nobody wrote down. Worked by hand: 100 cy of stone estimated, 1.4
 * tons a yard and a tenth wasted, is 154 tons at $30.00 = $4,620.00; 6 loads at $50.00 = $300.00; 400 sf of coating at
 * 18.18 sf a gallon is 20 gal, with a tenth wasted 22 gal at $40.00 = $880.00.
 */
class RecordedTest {
    private static final TakeoffSection DRAIN = new TakeoffSection(Section.DRAIN, "drain", "Drain");
    private static final TakeoffSection WALL_A = new TakeoffSection(Section.WALL, "A", "Wall A");
    private static final TakeoffSection WALL_B = new TakeoffSection(Section.WALL, "B", "Wall B");

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # case                     | tons  | cy written | invoices | cy in the report | quantity | price
            as much as estimated       | 154   |            |          | 100              | 0.00     | 0.00
            a tenth more came          | 169.4 |            |          | 110              | 462.00   | 0.00
            a tenth less came          | 138.6 |            |          | 90               | -462.00  | 0.00
            yards written, tons wasted | 169.4 | 105        |          | 105              | 231.00   | 231.00
            the invoice goes first     | 169.4 | 105        | 5000.00  | 105              | 231.00   | 149.00
            no tons, yards written     |       | 105        |          | 105              | 231.00   | 0.00
            """)
    void tonsTellTheStone(
            String name,
            BigDecimal tons,
            BigDecimal written,
            String invoices,
            BigDecimal yards,
            String byQuantity,
            String byPrice) {
        List<Actual> actuals = written == null
                ? List.of()
                : List.of(new Actual(
                        "STONE",
                        written,
                        Unit.CUBIC_YARD,
                        Optional.empty(),
                        Optional.ofNullable(invoices).map(Dollars::of)));
        AsBuilt record = record(List.of(), Optional.ofNullable(tons), Optional.empty(), actuals);
        Variance stone = variances(record, takeoff()).get(0);
        assertThat(stone.code()).isEqualTo("STONE");
        assertThat(stone.quantity().actual()).isEqualByComparingTo(yards);
        assertThat(stone.error().quantity()).isEqualTo(Dollars.of(byQuantity));
        assertThat(stone.error().production()).isEqualTo(Dollars.ZERO);
        assertThat(stone.error().price()).isEqualTo(Dollars.of(byPrice));
    }

    @ParameterizedTest(name = "{0} loads hauled")
    @CsvSource({"6, 0.00", "8, 100.00", "5, -50.00"})
    void loadsTellTheHaul(int loads, String byQuantity) {
        AsBuilt record = record(List.of(), Optional.empty(), Optional.of(loads), List.of());
        assertThat(variances(record, takeoff())).hasSize(1).allSatisfy(haul -> {
            assertThat(haul.code()).isEqualTo("HAUL");
            assertThat(haul.quantity().actual()).isEqualByComparingTo(BigDecimal.valueOf(loads));
            assertThat(haul.error().quantity()).isEqualTo(Dollars.of(byQuantity));
            assertThat(haul.difference()).isEqualTo(haul.error().quantity());
        });
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # case                       | sf built on A and B | gal on A and B | quantity | price
            as estimated                 | 300 | 100           | 16.5 | 5.5     | 0.00     | 0.00
            thicker                      | 300 | 100           | 19   | 6       | 0.00     | 120.00
            a larger wall, and thicker   | 330 | 110           | 19   | 6       | 88.00    | 32.00
            """)
    void gallonsTellTheCoatingOfTheAreaAsBuilt(
            String name, int a, int b, BigDecimal onA, BigDecimal onB, String byQuantity, String byPrice) {
        AsBuilt record = record(
                List.of(wall("A", Optional.of(onA)), wall("B", Optional.of(onB))),
                Optional.empty(),
                Optional.empty(),
                List.of());
        assertThat(variances(record, takeoff(coat(WALL_A, a), coat(WALL_B, b))))
                .hasSize(1)
                .allSatisfy(coat -> {
                    assertThat(coat.code()).isEqualTo("COAT");
                    assertThat(coat.quantity().actual()).isEqualByComparingTo(BigDecimal.valueOf(a + b));
                    assertThat(coat.error().quantity()).isEqualTo(Dollars.of(byQuantity));
                    assertThat(coat.error().price()).isEqualTo(Dollars.of(byPrice));
                    assertThat(coat.purchases().factor())
                            .as("no invoice, no new price")
                            .isEmpty();
                });
    }

    @Test
    void gallonsOfSomeWallsTellNothing() {
        AsBuilt record = record(
                List.of(wall("A", Optional.of(BigDecimal.TEN)), wall("B", Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                List.of());
        Takeoff built = takeoff(coat(WALL_A, 300), coat(WALL_B, 100));
        assertThat(JobVariances.of(job(record), company(TaxMode.NONE, "0"), book(), quote(), built))
                .isEmpty();
    }

    @Test
    void materialAtTheBooksPriceBearsTheTaxThatTheContractorPaysOnIt() {
        // 169.4 tons × $30.00 × 1.07 = $5,437.74, less the estimate for 105 cy, $4,851.00
        AsBuilt record = record(
                List.of(),
                Optional.of(new BigDecimal("169.4")),
                Optional.empty(),
                List.of(new Actual("STONE", new BigDecimal(105), Unit.CUBIC_YARD, Optional.empty(), Optional.empty())));
        Company taxed = company(TaxMode.ON_PURCHASES, "7");
        assertThat(JobVariances.of(job(record), taxed, book(), quote(), takeoff())
                        .orElseThrow()
                        .items())
                .extracting(one -> one.error().price())
                .containsExactly(Dollars.of("586.74"));
    }

    private static Company company(TaxMode mode, String rate) {
        Company c = Books.company();
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

    private static List<Variance> variances(AsBuilt record, Takeoff built) {
        return JobVariances.of(job(record), company(TaxMode.NONE, "0"), book(), quote(), built)
                .orElseThrow()
                .items();
    }

    private static Job job(AsBuilt record) {
        return Agreements.with(
                Jobs.job(),
                new Agreement(
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        Optional.of(record),
                        Optional.empty()));
    }

    private static AsBuilt record(
            List<BuiltWall> walls, Optional<BigDecimal> tons, Optional<Integer> loads, List<Actual> actuals) {
        return new AsBuilt(
                LocalDate.of(2026, 9, 1),
                Optional.of(LocalDate.of(2026, 9, 9)),
                walls,
                List.of(),
                tons.map(amount -> new Weight(amount.doubleValue())),
                loads,
                Optional.empty(),
                List.of(),
                actuals,
                List.of(),
                "");
    }

    private static BuiltWall wall(String label, Optional<BigDecimal> gallons) {
        Length five = Length.ofFeet(5);
        return new BuiltWall(label, five, five, five, gallons, List.of(), Optional.empty(), List.of(), List.of());
    }

    private static Takeoff takeoff(TakeoffLine... lines) {
        return new Takeoff(List.of(), List.of(), List.of(lines), List.of());
    }

    private static TakeoffLine coat(TakeoffSection wall, int area) {
        Given measured = new Given("a", "area", BigDecimal.valueOf(area), Unit.SQUARE_FOOT, "test");
        Quantity quantity = new Quantity(wall.label() + ".coat", Measure.COAT, wall, wall.label(), "", measured);
        return new TakeoffLine(
                "COAT",
                wall,
                BigDecimal.valueOf(area),
                Unit.SQUARE_FOOT,
                Optional.of(quantity),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty());
    }

    private static Quote quote() {
        List<PricedLine> lines = new ArrayList<>(List.of(
                line("STONE", DRAIN, 100, Unit.CUBIC_YARD, "4620.00", "0.00"),
                line("HAUL", DRAIN, 6, Unit.LOAD, "0.00", "300.00"),
                line("COAT", WALL_A, 300, Unit.SQUARE_FOOT, "660.00", "0.00"),
                line("COAT", WALL_B, 100, Unit.SQUARE_FOOT, "220.00", "0.00")));
        return new Quote(
                "",
                LocalDate.of(2026, 6, 1),
                lines,
                List.of(),
                Dollars.ZERO,
                Dollars.ZERO,
                Dollars.ZERO,
                Dollars.ZERO,
                List.of(),
                List.of(),
                List.of());
    }

    private static PricedLine line(
            String code, TakeoffSection section, int quantity, Unit unit, String material, String subcontract) {
        CostParts cost = new CostParts(
                Dollars.of(material), Dollars.ZERO, Dollars.ZERO, Dollars.ZERO, Dollars.of(subcontract), Dollars.ZERO);
        return new PricedLine(
                code,
                code,
                section,
                BigDecimal.valueOf(quantity),
                unit,
                "",
                cost,
                "",
                BigDecimal.ZERO,
                Dollars.ZERO,
                Dollars.ZERO);
    }

    private static PriceBook book() {
        Material stone = new Material(
                Dollars.of("30.00"),
                "ton",
                BigDecimal.ONE,
                Unit.TON,
                BigDecimal.ONE,
                Optional.of(Measure.STONE_TONS),
                Percent.of("10"));
        Material pail = new Material(
                Dollars.of("200.00"),
                "5 gal pail",
                new BigDecimal(5),
                Unit.GALLON,
                BigDecimal.ONE,
                Optional.of(Measure.COAT_GALLONS),
                Percent.of("10"));
        return new PriceBook(
                "",
                LocalDate.of(2026, 6, 1),
                Map.of(
                        "STONE", item("STONE", Unit.CUBIC_YARD, Optional.empty(), Optional.of(stone), Optional.empty()),
                        "HAUL",
                                item(
                                        "HAUL",
                                        Unit.LOAD,
                                        Optional.of(Measure.HAUL_LOAD),
                                        Optional.empty(),
                                        Optional.of(Dollars.of("50.00"))),
                        "COAT",
                                item(
                                        "COAT",
                                        Unit.SQUARE_FOOT,
                                        Optional.of(Measure.COAT),
                                        Optional.of(pail),
                                        Optional.empty())),
                Map.of(),
                List.of(),
                1.4,
                10);
    }

    private static LineItem item(
            String code,
            Unit unit,
            Optional<Measure> follows,
            Optional<Material> material,
            Optional<Dollars> subcontract) {
        return new LineItem(
                new ItemIdentity(code, Section.DRAIN, code, code, unit),
                new ItemUse(follows, true, false, Optional.empty()),
                new ItemCost(material, Optional.empty(), subcontract, Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                new ItemUpkeep(
                        new Source("test", LocalDate.of(2026, 6, 1)),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        List.of()));
    }
}
