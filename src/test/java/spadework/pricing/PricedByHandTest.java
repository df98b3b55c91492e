// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Company;
import spadework.company.ProfitBasis;
import spadework.company.TaxMode;
import spadework.job.Jobs;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;
import spadework.working.Worked;

/**
 * A small job from hours to installments, worked out with a pencil. The build-up is the published order: 12,000 with
 * 10% of contingency, 20% of overhead and a margin of 12% is 18,000, so direct cost sells for 1.5 times itself.
 */
class PricedByHandTest {
    private static final Company COMPANY = Priced.company();

    private static Quote quote(Company company) {
        return Pricing.known(Jobs.job(), company, Priced.BOOK, Priced.TAKEOFF);
    }

    private static PricedLine line(Quote quote, String code) {
        return quote.lines().stream()
                .filter(line -> line.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static CostParts parts(
            String material, String tax, String labor, String machine, String subcontract, String disposal) {
        return new CostParts(
                Dollars.of(material),
                Dollars.of(tax),
                Dollars.of(labor),
                Dollars.of(machine),
                Dollars.of(subcontract),
                Dollars.of(disposal));
    }

    /** 1 × 24.00 × 1.5 + 2 × 20.00 × 1.565 = 98.60; 41.40 for the machine where one runs. */
    @Test
    void hourOfACrew() {
        assertThat(CrewHour.of(COMPANY, Priced.DIG.labor().orElseThrow()).amount())
                .isEqualByComparingTo("140.00");
        assertThat(CrewHour.of(COMPANY, Priced.PIPE.labor().orElseThrow()).amount())
                .isEqualByComparingTo("98.60");
    }

    /** 25 cy ÷ 10 an hour = 2.5 h: 246.50 + 103.50 + 25 × 12.00 = 650.00; × 1.5 ÷ 25 = 39.00 a yard. */
    @Test
    void digging() {
        PricedLine line = line(quote(COMPANY), "DIG");
        assertThat(line)
                .isEqualTo(new PricedLine(
                        "DIG",
                        "DIG by name",
                        Priced.WALL,
                        new BigDecimal("25"),
                        Unit.CUBIC_YARD,
                        "",
                        parts("0.00", "0.00", "246.50", "103.50", "0.00", "300.00"),
                        "dig crew",
                        line.crewHours(),
                        Dollars.of("39.00"),
                        Dollars.of("975.00")));
        assertThat(line.crewHours()).isEqualByComparingTo("2.5");
        assertThat(line.cost().direct()).isEqualTo(Dollars.of("650.00"));
    }

    /**
     * 4 sticks at 30.00 and 6% of tax, 33 ÷ 20 = 1.65 h: 120.00 + 7.20 + 162.69 = 289.89; × 1.5 ÷ 33 = 13.177, so 13.18
     * a foot and 434.94.
     */
    @Test
    void pipe() {
        PricedLine line = line(quote(COMPANY), "PIPE");
        assertThat(line.cost()).isEqualTo(parts("120.00", "7.20", "162.69", "0.00", "0.00", "0.00"));
        assertThat(line.crewHours()).isEqualByComparingTo("1.65");
        assertThat(line.unitPrice()).isEqualTo(Dollars.of("13.18"));
        assertThat(line.price()).isEqualTo(Dollars.of("434.94"));
    }

    /** A fee has no crew; what came to nothing has no line. */
    @Test
    void permitAndWhatIsNot() {
        PricedLine line = line(quote(COMPANY), "PERMIT");
        assertThat(line.cost()).isEqualTo(parts("0.00", "0.00", "0.00", "0.00", "150.00", "0.00"));
        assertThat(line.crew()).isEmpty();
        assertThat(line.crewHours()).isEqualByComparingTo("0");
        assertThat(line.price()).isEqualTo(Dollars.of("225.00"));
        assertThat(quote(COMPANY).lines()).extracting(PricedLine::code).containsExactly("DIG", "PIPE", "PERMIT");
    }

    /** 434.94 prints as 435.00; 975 + 435 + 225 = 1,635.00, a tenth of it at signing. */
    @Test
    void sectionsAndInstallments() {
        Quote quote = quote(COMPANY);
        assertThat(quote.sections())
                .extracting(PricedSection::section, PricedSection::lines, PricedSection::rounding, PricedSection::price)
                .containsExactly(
                        tuple(Priced.WALL, Dollars.of("975.00"), Dollars.ZERO, Dollars.of("975.00")),
                        tuple(Priced.DRAIN, Dollars.of("434.94"), Dollars.of("0.06"), Dollars.of("435.00")),
                        tuple(Priced.SETUP, Dollars.of("225.00"), Dollars.ZERO, Dollars.of("225.00")));
        assertThat(quote.price()).isEqualTo(Dollars.of("1635.00"));
        assertThat(quote.payments())
                .extracting(Due::amount)
                .containsExactly(Dollars.of("163.50"), Dollars.of("1471.50"));
        assertThat(Dollars.total(Pricing.work(COMPANY, Priced.BOOK, Priced.TAKEOFF).stream()
                        .map(SectionPrice::price)
                        .toList()))
                .isEqualTo(Dollars.of("1635.00"));
    }

    /** 650.00 + 289.89 + 150.00 = 1,089.89 → 1,198.879 → 1,438.6548 → ÷ 0.88 = 1,634.835; 0.165 is rounding. */
    @Test
    void buildUpWithAMargin() {
        List<Worked> steps = quote(COMPANY).buildUp();
        assertThat(steps)
                .extracting(Worked::symbol, Worked::formula)
                .containsExactly(
                        tuple("D", "sum"),
                        tuple("K", "D × (1 + c)"),
                        tuple("O", "K × (1 + o)"),
                        tuple("E", "O ÷ (1 − m)"),
                        tuple("R", "Q − E"));
        assertThat(steps.stream().map(Worked::value).toList())
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(
                        new BigDecimal("1089.89"),
                        new BigDecimal("1198.879"),
                        new BigDecimal("1438.6548"),
                        new BigDecimal("1634.835"),
                        new BigDecimal("0.165"));
        assertThat(steps.get(3).inputs()).extracting("name").containsExactly("with overhead", "margin");
    }

    /** The same 12% as a markup: 1,438.6548 × 1.12 = 1,611.293376. */
    @Test
    void buildUpWithAMarkup() {
        Worked exact = quote(Priced.company(Priced.rules(ProfitBasis.MARKUP, "0.00"), TaxMode.ON_PURCHASES))
                .buildUp()
                .get(3);
        assertThat(exact.formula()).isEqualTo("O × (1 + m)");
        assertThat(exact.value()).isEqualByComparingTo("1611.293376");
        assertThat(exact.inputs()).extracting("name").containsExactly("with overhead", "markup");
    }

    /** The minimum tops 1,635.00 up where the job falls short of it, and shows apart. */
    @ParameterizedTest(name = "minimum {0}: {1} on top, {2}")
    @CsvSource({"1634.99, 0.00, 1635.00", "1635.00, 0.00, 1635.00", "1635.01, 0.01, 1635.01", "2000.00, 365.00, 2000.00"
    })
    void smallJobMinimum(String minimum, String topUp, String price) {
        Quote quote = quote(Priced.company(Priced.rules(ProfitBasis.MARGIN, minimum), TaxMode.ON_PURCHASES));
        assertThat(quote.minimumTopUp()).isEqualTo(Dollars.of(topUp));
        assertThat(quote.price()).isEqualTo(Dollars.of(price));
    }

    /**
     * Without tax on what is bought the pipe costs 282.69: 12.85 a foot, 424.05, printed 424.00; 6% of 1,624 is
     * 97.44.
     */
    @Test
    void taxOnThePriceInstead() {
        Quote quote = quote(Priced.company(Priced.rules(ProfitBasis.MARGIN, "0.00"), TaxMode.ON_PRICE));
        assertThat(quote.price()).isEqualTo(Dollars.of("1624.00"));
        assertThat(quote.tax()).isEqualTo(Dollars.of("97.44"));
        assertThat(quote.total()).isEqualTo(Dollars.of("1721.44"));
    }

    /** What the homeowner is told of it: prices, no cost. */
    @Test
    void offeredPrice() {
        Quote quote = quote(Priced.company(Priced.rules(ProfitBasis.MARGIN, "2000.00"), TaxMode.NONE));
        OfferedPrice offered = quote.offered();
        assertThat(offered.bookTitle()).isEqualTo("by hand");
        assertThat(offered.bookDate()).isEqualTo(LocalDate.of(2026, 2, 3));
        assertThat(offered.sections())
                .containsExactly(
                        new SectionPrice(Priced.WALL, Dollars.of("975.00")),
                        new SectionPrice(Priced.DRAIN, Dollars.of("424.00")),
                        new SectionPrice(Priced.SETUP, Dollars.of("225.00")));
        assertThat(offered.minimumTopUp()).isEqualTo(Dollars.of("376.00"));
        assertThat(offered.price()).isEqualTo(Dollars.of("2000.00"));
        assertThat(offered.tax()).isEqualTo(Dollars.ZERO);
        assertThat(offered.total()).isEqualTo(Dollars.of("2000.00"));
        assertThat(offered.unitPrices()).isEqualTo(quote.unitPrices());
        assertThat(offered.payments()).isEqualTo(quote.payments());
    }

    /**
     * An item by itself, rounded up to the dollar. A yard dug: (9.86 + 4.14 + 12.00) × 1.5 = 39.00. 33 ft of pipe: 33 ×
     * 1.05 ÷ 10 × 30.00 = 103.95, tax 6.24, labor 162.69, × 1.5 = 409.32, so 410.00.
     */
    @ParameterizedTest(name = "{1} of {0}: {2}")
    @CsvSource({"DIG, 1, 39.00", "PIPE, 33, 410.00", "PERMIT, 1, 225.00", "PERMIT, 3, 675.00"})
    void itemByItself(String code, BigDecimal quantity, String price) {
        LineItem item = Priced.BOOK.get(code);
        assertThat(ItemPrice.of(item, quantity, COMPANY, Priced.BOOK)).isEqualTo(Dollars.of(price));
    }

    /** Which unit prices are of more wall or of more depth, and of which wall. */
    @ParameterizedTest(name = "{0} for {1}: {2}")
    @CsvSource({
        "WALL-FOOT-A,   A, wall-foot",
        "WALL-DEEPER-A, A, wall-deeper",
        "WALL-FOOT-A,   B, ",
        "WALL-DEEPER-A, B, ",
        "U-ROCK,        A, "
    })
    void wallKeys(String code, String wall, String key) {
        UnitPrice price = new UnitPrice(code, "more", wall, Unit.FOOT, Dollars.of("1.00"));
        assertThat(UnitPrice.wallKey(price)).isEqualTo(Optional.ofNullable(key));
    }
}
