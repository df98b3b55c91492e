// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.company.Company;
import spadework.company.CrewPlace;
import spadework.company.Rates;
import spadework.company.Wage;
import spadework.job.Actual;
import spadework.job.Agreement;
import spadework.job.Agreements;
import spadework.job.AsBuilt;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.ItemCost;
import spadework.pricebook.ItemIdentity;
import spadework.pricebook.ItemUpkeep;
import spadework.pricebook.ItemUse;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.pricebook.Source;
import spadework.pricing.CostParts;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffSection;

/**
 * Stone worked by hand, 100 cy estimated: 5 cy an hour is 20 h at $50.00 = $1,000.00; a ton each at $30.00 = $3,000.00.
 * The split is the usual one of standard costing against the flexed estimate: usage at standard cost, efficiency at
 * standard rate, spending on the actual quantity.
 */
class JobVariancesTest {
    private static final Takeoff NOTHING_MEASURED = new Takeoff(List.of(), List.of(), List.of(), List.of());

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # case                  | cy  | h  | invoices | quantity | production | price   | actual
            as estimated            | 100 | 20 | 3000.00  | 0.00     | 0.00       | 0.00    | 4000.00
            more of it              | 110 | 22 | 3300.00  | 400.00   | 0.00       | 0.00    | 4400.00
            less of it              | 80  | 16 | 2400.00  | -800.00  | 0.00       | 0.00    | 3200.00
            slower                  | 100 | 25 | 3000.00  | 0.00     | 250.00     | 0.00    | 4250.00
            dearer                  | 100 | 20 | 3456.78  | 0.00     | 0.00       | 456.78  | 4456.78
            all three               | 110 | 24 | 3500.00  | 400.00   | 100.00     | 200.00  | 4700.00
            all three for the good  | 90  | 17 | 2600.00  | -400.00  | -50.00     | -100.00 | 3450.00
            no hours written down   | 110 |    | 3500.00  | 400.00   | 0.00       | 200.00  | 4600.00
            no invoice written down | 110 | 24 |          | 400.00   | 100.00     | 0.00    | 4500.00
            """)
    void splitRecoversEachPlantedError(
            String name,
            BigDecimal quantity,
            BigDecimal hours,
            String invoices,
            String byQuantity,
            String byProduction,
            String byPrice,
            String actual) {
        Variance variance =
                variance(quantity, hours, Optional.ofNullable(invoices).map(Dollars::of), estimated(100));
        assertThat(variance.cost().estimated()).isEqualTo(Dollars.of("4000.00"));
        assertThat(variance.error().quantity()).isEqualTo(Dollars.of(byQuantity));
        assertThat(variance.error().production()).isEqualTo(Dollars.of(byProduction));
        assertThat(variance.error().price()).isEqualTo(Dollars.of(byPrice));
        assertThat(variance.cost().actual()).isEqualTo(Dollars.of(actual));
    }

    @Test
    void itemThatNobodyEstimatedIsAQuantityErrorAtTheBooksRates() {
        Variance variance =
                variance(new BigDecimal(10), new BigDecimal(3), Optional.of(Dollars.of("310.00")), List.of());
        assertThat(variance.cost().estimated()).isEqualTo(Dollars.ZERO);
        assertThat(variance.error().quantity()).isEqualTo(Dollars.of("400.00"));
        assertThat(variance.error().production()).isEqualTo(Dollars.of("50.00"));
        assertThat(variance.error().price()).isEqualTo(Dollars.of("10.00"));
        assertThat(variance.cost().actual()).isEqualTo(Dollars.of("460.00"));
    }

    @Test
    void productionIsToldWithoutWhatSlowsTheCrewDown() {
        // estimated 25 h instead of 20 h for a condition that takes 1.25 times as long; 25 h came: the rate holds
        PricedLine slow = line(100, "25", "1250.00");
        Variance variance = variance(new BigDecimal(100), new BigDecimal(25), Optional.empty(), List.of(slow));
        assertThat(variance.hours().production().orElseThrow().doubleValue()).isCloseTo(5, within(1e-9));
        assertThat(variance.error().production()).isEqualTo(Dollars.ZERO);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13})
    void threeErrorsAlwaysAddUpToTheCent(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            int count = 1 + random.nextInt(3);
            List<PricedLine> lines = new ArrayList<>();
            for (int l = 0; l < count; l++) {
                lines.add(line(1 + random.nextInt(500), "0." + (1 + random.nextInt(999)), cents(random)));
            }
            Variance v = variance(
                    BigDecimal.valueOf(1 + random.nextInt(90_000), 1),
                    BigDecimal.valueOf(random.nextInt(9_000), 2),
                    Optional.of(Dollars.of(cents(random))),
                    lines);
            assertThat(v.error()
                            .quantity()
                            .plus(v.error().production())
                            .plus(v.error().price()))
                    .isEqualTo(v.difference());
        }
    }

    private static String cents(Random random) {
        return BigDecimal.valueOf(random.nextInt(9_999_999), 2).toPlainString();
    }

    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # worked by hand from a book that says 5 cy an hour
            MEDIAN | 4,4.2,9          | 4.2 cy
            MEDIAN | 4,6              |
            MEDIAN | 1,2,3,4,4.4,4.6  | 4 cy
            MEDIAN | 4,4,6,6          | 5 cy
            MEDIAN | 4,4.5,4.6,4.7    | 4.55 cy
            STEP   | 4                | 4.75 cy
            STEP   | 4,8              | 5.56 cy
            """)
    void rateFollowsItsRule(RateRule rule, String rates, String suggested) {
        List<JobVariances> jobs = new ArrayList<>();
        for (String rate : rates.split(",")) {
            BigDecimal hours = new BigDecimal(100).divide(new BigDecimal(rate), java.math.MathContext.DECIMAL64);
            int number = jobs.size() + 1;
            Variance variance = variance(new BigDecimal(100), hours, Optional.empty(), estimated(100));
            jobs.add(new JobVariances(
                    "J-" + number, "", LocalDate.of(2026, 6, number), "clay, none", List.of(variance)));
        }
        List<Suggestion> suggestions = new FeedbackSeason(jobs).suggestions(book(), rule);
        boolean none = suggested == null || suggested.equals("5 cy");
        assertThat(suggestions).hasSize(none ? 0 : 1);
        suggestions.forEach(one -> {
            assertThat(one.what()).isEqualTo("labor/perHour");
            assertThat(one.from()).isEqualTo("5 cy");
            assertThat(one.to()).isEqualTo(suggested);
            assertThat(one.evidence()).hasSize(Math.min(jobs.size(), rule == RateRule.MEDIAN ? 5 : 99));
        });
    }

    @Test
    void seasonAddsItsJobs() {
        Variance one =
                variance(new BigDecimal(110), new BigDecimal(24), Optional.of(Dollars.of("3500.00")), estimated(100));
        FeedbackSeason season = new FeedbackSeason(List.of(job("2", 2, one), job("1", 1, one), job("3", 3, one)));
        assertThat(season.jobs()).extracting(JobVariances::number).containsExactly("1", "2", "3");
        assertThat(season.totals())
                .containsExactly(new FeedbackSeason.Total(
                        "STONE",
                        "Stone",
                        3,
                        Dollars.of("12000.00"),
                        Dollars.of("14100.00"),
                        Dollars.of("1200.00"),
                        Dollars.of("300.00"),
                        Dollars.of("600.00")));
        // 3,500 ÷ 3,300 of $30.00
        assertThat(season.suggestions(book(), RateRule.MEDIAN))
                .extracting(Suggestion::to)
                .containsExactly("4.58 cy", "$31.82");
    }

    private static JobVariances job(String number, int day, Variance variance) {
        return new JobVariances(number, "", LocalDate.of(2026, 6, day), "clay, none", List.of(variance));
    }

    private static Variance variance(
            BigDecimal quantity, BigDecimal hours, Optional<Dollars> invoices, List<PricedLine> lines) {
        Actual actual = new Actual("STONE", quantity, Unit.CUBIC_YARD, Optional.ofNullable(hours), invoices);
        AsBuilt built = new AsBuilt(
                LocalDate.of(2026, 9, 1),
                Optional.of(LocalDate.of(2026, 9, 9)),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(actual),
                List.of(),
                "");
        Job job = Agreements.with(
                Jobs.job(),
                new Agreement(
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        Optional.of(built),
                        Optional.empty()));
        Quote quote = new Quote(
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
        return JobVariances.of(job, company(), book(), quote, NOTHING_MEASURED)
                .orElseThrow()
                .items()
                .get(0);
    }

    private static List<PricedLine> estimated(int quantity) {
        return List.of(line(quantity, "20", "1000.00"));
    }

    private static PricedLine line(int quantity, String hours, String labor) {
        CostParts cost = new CostParts(
                Dollars.of(30 * quantity + ".00"),
                Dollars.ZERO,
                Dollars.of(labor),
                Dollars.ZERO,
                Dollars.ZERO,
                Dollars.ZERO);
        return new PricedLine(
                "STONE",
                "Stone",
                new TakeoffSection(Section.DRAIN, "drain", "Drain"),
                new BigDecimal(quantity),
                Unit.CUBIC_YARD,
                "",
                cost,
                "two",
                new BigDecimal(hours),
                Dollars.ZERO,
                Dollars.ZERO);
    }

    private static PriceBook book() {
        Material stone = new Material(
                Dollars.of("30.00"), "ton", BigDecimal.ONE, Unit.TON, BigDecimal.ONE, Optional.empty(), Percent.ZERO);
        LineItem item = new LineItem(
                new ItemIdentity("STONE", Section.DRAIN, "Stone", "Stone", Unit.CUBIC_YARD),
                new ItemUse(Optional.empty(), false, false, Optional.empty()),
                new ItemCost(
                        Optional.of(stone),
                        Optional.of(new Labor("two", new BigDecimal(5), Optional.empty(), List.of(), Optional.empty())),
                        Optional.empty(),
                        Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                new ItemUpkeep(
                        new Source("test", LocalDate.of(2026, 6, 1)),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        List.of()));
        return new PriceBook("", LocalDate.of(2026, 6, 1), Map.of("STONE", item), Map.of(), List.of(), 1.4, 10);
    }

    /** A crew of two whose hour costs $50.00. */
    private static Company company() {
        Company c = Books.company();
        Map<String, List<CrewPlace>> crews = new HashMap<>(Map.of("two", List.of(new CrewPlace("hand", 2))));
        return new Company(
                c.name(),
                c.credentials(),
                c.contact(),
                c.letterhead(),
                new Rates(Map.of("hand", new Wage(Dollars.of("20.00"), Percent.of("25"))), crews, Map.of(), List.of()),
                c.production(),
                c.priceRules(),
                c.tax(),
                c.usualTerms());
    }
}
