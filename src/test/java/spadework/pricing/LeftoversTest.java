// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Backfill;
import spadework.company.Company;
import spadework.company.LeftoverRule;
import spadework.company.Leftovers;
import spadework.company.PriceRules;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Measuring;
import spadework.takeoff.Purchase;
import spadework.takeoff.Quantity;

/** Who pays for what is left over of whole packages, and how a company's own fill comes out. */
class LeftoversTest {
    private static final PriceBook BOOK = Books.standard();

    /** 33 ft of pipe with 5% waste are 3.465 sticks of 10 ft at $30.00: four are bought for $120.00. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(textBlock = """
            CHARGED_TO_THE_JOB, 100, 120.00
            CARRIED_TO_STOCK,   0,   103.95
            SHARED,             50,  111.98
            SHARED,             0,   103.95
            SHARED,             100, 120.00
            """)
    void pipe(LeftoverRule rule, String share, String cost) {
        Job job = Jobs.job(Jobs.wall().withLength(Length.ofFeet(33)));
        Quote quote =
                Pricing.known(job, company(new Leftovers(rule, Percent.of(share))), BOOK, Measuring.of(job, BOOK));
        assertThat(quote.lines().stream()
                        .filter(line -> line.code().equals("PIPE-PERF4"))
                        .map(l -> l.cost().material()))
                .containsExactly(Dollars.of(cost));
    }

    /** Packages that come out even leave nothing over, whatever the rule: 200 ft with 5% are 21 sticks. */
    @Test
    void nothingLeftOverCostsTheSame() {
        Job job = Jobs.job(Jobs.wall().withLength(Length.ofFeet(200)));
        Purchase pipe = Measuring.of(job, BOOK).purchases().stream()
                .filter(purchase -> purchase.code().equals("PIPE-PERF4"))
                .findFirst()
                .orElseThrow();
        assertThat(pipe.needed()).isEqualByComparingTo("21");
        assertThat(pipe.packages()).isEqualByComparingTo("21");
        for (Leftovers leftovers : List.of(Leftovers.CHARGED, Leftovers.STOCK)) {
            Quote quote = Pricing.known(job, company(leftovers), BOOK, Measuring.of(job, BOOK));
            assertThat(quote.lines().stream()
                            .filter(l -> l.code().equals("PIPE-PERF4"))
                            .map(l -> l.cost().material()))
                    .containsExactly(Dollars.of("630.00"));
        }
    }

    /** The default of the demo company is what was always done. */
    @Test
    void withoutARuleTheJobPays() {
        assertThat(Books.company().priceRules().leftovers()).isEqualTo(Leftovers.CHARGED);
    }

    /** Backfill of F cy takes F ÷ (1 − shrink) of bank: loam shrinks 10% by the book (E-02), 20% by the company. */
    @Test
    void companyShrinkTakesMoreOfTheBank() {
        Job job = Jobs.job();
        double surplus = surplus(job, BOOK);
        double own = surplus(job, BOOK.filledBy(new Backfill(Percent.of("20"), "own fills")));
        double filled = Measuring.of(job, BOOK).quantities().stream()
                        .filter(quantity -> quantity.measure() == Measure.BACKFILL)
                        .mapToDouble(quantity -> quantity.value().doubleValue())
                        .sum()
                + 2.5 * 40 / 27;
        assertThat(surplus - own).isCloseTo(filled / 0.8 - filled / 0.9, org.assertj.core.api.Assertions.within(1e-6));
        PriceBook filledBook = BOOK.filledBy(new Backfill(Percent.of("20"), "own fills"));
        assertThat(filledBook.earth())
                .allSatisfy(factor -> assertThat(factor.source().text()).contains("own fills (company)"));
    }

    private static double surplus(Job job, PriceBook book) {
        return Measuring.of(job, book).quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.SURPLUS)
                .map(Quantity::value)
                .findFirst()
                .orElseThrow()
                .doubleValue();
    }

    private static Company company(Leftovers leftovers) {
        PriceRules r = Books.company().priceRules();
        return Books.company()
                .withPriceRules(new PriceRules(
                        r.contingency(), r.overhead(), r.basis(), r.profit(), r.minimum(), r.step(), leftovers));
    }
}
